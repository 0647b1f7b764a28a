import type { JobState } from '../job/index.ts'
import type { ArrivalSheet } from './arrival-sheet.ts'
import type { SheetSources } from './sources.ts'

/** What any vehicle may have and no corner model knows. @source common practice, no source */
const any: readonly (readonly [string, string])[] = [
  ['airbag', 'Leave it alone; waiting times come only from the maker.'],
  ['high voltage', 'Orange cables: nothing is touched before it is made dead by whoever may do that.'],
  ['air suspension', 'It may level itself: switch that off before it is lifted.'],
  ['active damping', 'Leads to the dampers: unplugged only with the ignition off.'],
  ['load inside', 'It lifts unevenly, and heights mean nothing until it is out.'],
]

/**
 * Cautions of this vehicle: those that were noted, and those that its corner models or its kind give reason for.
 *
 * @source common practice, no source; what stores energy: the corner models
 */
export function arrivalCautions(sources: SheetSources, { arrival }: JobState): ArrivalSheet['cautions'] {
  const said = arrival?.cautions ?? []
  const models = [sources.corners.front, sources.corners.rear].filter((corner) => corner !== null)
  const stored = new Set(
    models.flatMap(({ parts }) =>
      Object.values(parts).flatMap((part) => ('stores' in part ? [part.stores] : [])),
    ),
  )
  const known: readonly (readonly [string, string])[] = [
    ...(stored.has('gas') ? [['gas strut', 'Under pressure inside: never cut, never heated.'] as const] : []),
    ...(stored.has('torsion bar')
      ? [['torsion bar', 'Wound up: unwound with its turns counted, nobody in line with its arm.'] as const]
      : []),
    ...(stored.has('coil')
      ? [['coil spring', 'Held before any joint that keeps it in is undone.'] as const]
      : []),
  ]
  const offered = [...known, ...any].filter(
    ([words], i, all) => all.findIndex(([other]) => other === words) === i,
  )
  return [
    ...offered.map(([words, why]) => ({ words, why, said: said.includes(words) })),
    ...said
      .filter((one) => !offered.some(([words]) => words === one))
      .map((words) => ({ words, why: '', said: true })),
  ]
}

/** What must be said where heights and tyres are read. @source common practice, no source */
export const arrivalStanding: readonly string[] = [
  'Hands and head stay clear of the wheel arch while the vehicle stands on its springs: air suspension may lower it by itself.',
  'Level ground, wheels blocked, nobody in it. Rolled in, not jacked: a vehicle that was lifted stands high until it is settled.',
]
