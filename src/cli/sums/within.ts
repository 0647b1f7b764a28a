import { BadInput } from '../files/outcome.ts'

/** A reading that can be off. */
export interface Reading {
  /** "the hand along the grip" */
  readonly of: string
  /** What is taken when nobody says, as text with its unit. */
  readonly usual: string
  /** Who says so; common practice when left out. */
  readonly by?: string
  readonly read: (text: string, options: { at: string }) => number
}

/** What each reading is within, and the lines that say so. */
export interface Within<Name extends string> {
  /** Half-widths, SI. */
  readonly of: Readonly<Record<Name, number>>
  readonly told: readonly string[]
}

/**
 * How far readings may be off: `within="hand=20 mm, angle=5°"`. What is not said is taken as usual, and told as such.
 *
 * @throws {BadInput} for a name that is not read here, one said twice, and a width below nothing
 */
export function withinOf<Name extends string>(
  text: string | undefined,
  readings: Readonly<Record<Name, Reading>>,
): Within<Name> {
  const names = Object.keys(readings) as Name[]
  const said = new Map<string, string>()
  const wrong: string[] = []
  for (const part of (text ?? '').split(/[;,](?!\d)/).filter((one) => one.trim() !== '')) {
    const [name = '', width] = part.split('=').map((half) => half.trim())
    if (width === undefined || !names.includes(name as Name))
      wrong.push(
        `“${part.trim()}” in within says nothing here. Write one or more of ${names.map((n) => `${n}=${readings[n].usual}`).join(', ')}.`,
      )
    else if (said.has(name)) wrong.push(`“${name}” in within is said twice. Leave one of them out.`)
    else said.set(name, width)
  }
  if (wrong.length > 0) throw new BadInput(wrong)
  const of = {} as Record<Name, number>
  const told: string[] = []
  for (const name of names) {
    const { of: what, usual, by = 'common practice, no source', read } = readings[name]
    const width = said.get(name)
    const half = read(width ?? usual, { at: `within ${name}` })
    if (half < 0)
      throw new BadInput([`within ${name} is “${width}”: how far a reading may be off is not below nothing.`])
    of[name] = half
    told.push(`${what} within ± ${width ?? usual} (${width === undefined ? by : 'as given'})`)
  }
  return { of, told }
}
