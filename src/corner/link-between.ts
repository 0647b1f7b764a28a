import { type Family, linkNames } from './point-names.ts'

/**
 * The linkage room's name of the link that runs between two points of a file, either way round.
 *
 * @returns "tie", "lowerFront", "link0" …; null when no link runs there
 * @source definition
 * @example linkBetween('strut', 'tie-outer', 'tie-inner') // 'tie'
 */
export function linkBetween(family: Family, from: string, to: string): string | null {
  const link = linkNames[family].find(([a, b]) => (a === from && b === to) || (a === to && b === from))
  return link?.[2] ?? null
}
