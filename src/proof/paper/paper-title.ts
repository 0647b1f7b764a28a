import type { ProofSheet } from '../../sheet/index.ts'

/** The fields of the title block: a label and what stands under it. */
export function paperTitle({ title }: ProofSheet): readonly (readonly [label: string, text: string])[] {
  return [
    ['job', title.job],
    ['days', title.days ?? 'no day recorded'],
    ['mileage', title.mileage ?? 'not recorded'],
    ['VIN', title.vin ?? 'not recorded'],
    ['complaint', title.complaint],
    ['asked for', title.asked ?? 'not recorded'],
  ]
}

/** That a demo is one. */
export const demoWords = 'Invented for a demonstration: nothing on this paper was measured on a vehicle.'

/** Room for hands at the foot. */
export const signPlaces: readonly string[] = [
  'work done: initials, day',
  'handed over: initials, day',
  'taken over, told of what is open: initials, day',
]

/** What the shapes mean, and what made the paper. */
export const footWords = (version: string): string =>
  `Filled square: inside or done. Half: inside, not proven. Hatched: outside, not proven. Cross: outside. Empty square: open. Laid out by Axlewright ${version}.`
