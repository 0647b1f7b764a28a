import type { JobState, Round } from '../job/index.ts'
import type { SheetReading } from './sheet.ts'

/**
 * What must be said on a sheet where adjusters are turned and angles read. They may be acknowledged, never
 * hidden.
 *
 * @source common practice, no source
 */
export function sheetCautions(
  state: JobState,
  round: Round | null,
  rows: readonly SheetReading[],
): readonly string[] {
  const toe = rows.filter((row) => row.name.includes('toe') && row.limit)
  const turned = (round?.moves.length ?? 0) > 0
  const touched = state.moves.length > 0 || state.renewed.length > 0
  // A move of camber or caster voids toe, and toe that nobody read after the work is not set.
  const toeOpen = toe.some((row) => row.verdict !== 'inside') || turned || (touched && toe.length === 0)
  return [
    'Never get under a vehicle that a jack alone carries: on its wheels, on ramps, in a pit, or on stands that you have seen take the load.',
    ...(round && !round.settled
      ? [
          'These readings were taken on wheels that had not settled. Roll 2 m forward and back, jounce rear then front, and read again.',
        ]
      : []),
    ...(state.pressures
      ? []
      : ['No tyre pressures are recorded. Set them first: height, camber and toe follow them.']),
    ...(toeOpen ? ['Toe is not set: at walking pace in the yard only, not on the road.'] : []),
    'A bolt that carries an eccentric is nipped up for reading, and final only after the last move, at ride height. Read again after it is final.',
    'Limits, torques and positions come from the maker’s service information and local inspection law; they stand above this sheet.',
  ]
}
