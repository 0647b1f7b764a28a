import type { Corner } from './corner-schema.ts'

/**
 * A letter for each joint of the drawing: A, B, … Z, AA, AB in the order in which the file lists the joints
 * that sit at a point, so that a joint keeps its letter while new ones are added behind it.
 *
 * @returns letter by joint
 * @source definition
 */
export function jointLetters(corner: Corner): Readonly<Record<string, string>> {
  const placed = Object.keys(corner.joints).filter((id) => corner.joints[id]!.at !== undefined)
  return Object.fromEntries(placed.map((id, i) => [id, letter(i)]))
}

const letter = (i: number): string =>
  i < 26 ? String.fromCharCode(65 + i) : letter(Math.floor(i / 26) - 1) + letter(i % 26)
