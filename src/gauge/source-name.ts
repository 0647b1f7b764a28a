/** What kind of error a source is; the word before the colon of its name. */
const sourceKinds = [
  'reading',
  'step',
  'steer reading',
  'steer step',
  'scale',
  'zero',
  'steer scale',
  'steer zero',
  'strings',
  'tape height',
  'floor',
  'run-out',
  'play',
  'height',
  'response',
  'linkage',
  'assumed',
] as const

/** A kind of error. @source definition */
export type SourceKind = (typeof sourceKinds)[number]

/**
 * The name of an error. Same kind and detail: the same error, wherever it appears.
 *
 * @param detail what it belongs to: a gauge for what stays, an occasion for what is new each time
 * @source definition
 * @example sourceName('zero', 'level') // zero: level
 */
export const sourceName = (kind: SourceKind, detail: string): string => `${kind}: ${detail}`

/**
 * The kind of an error by its name; null for one that this room did not name.
 *
 * @source definition
 * @example kindOfSource('floor: bay 2, front left') // floor
 */
export function kindOfSource(source: string): SourceKind | null {
  const kind = source.slice(0, source.indexOf(': '))
  return (sourceKinds as readonly string[]).includes(kind) ? (kind as SourceKind) : null
}
