import { normalCdf, standardUncertainty } from '../measure/index.ts'
import { chanceInside } from './chance-inside.ts'
import type { Judge } from './judge.ts'
import { moveNoises, type NamedNoise } from './move-noises.ts'
import type { OnSteps } from './on-steps.ts'
import { rowShifts } from './row-shifts.ts'
import type { SearchSpace } from './search-space.ts'

/** Settings that could be made, and how surely they bring the judged rows inside. */
export interface Candidate extends OnSteps {
  readonly chance: number
}

/** Draws of a first look, and how far it may be off: five standard deviations of a share of 0.9. @source own choice */
const firstLook = 500
const lookDoubt = 0.07

/**
 * Judges settings on the drawn errors.
 *
 * @param judged rows that count
 * @param atLeast a candidate that is well below this after a first look is not drawn out; its `chance` is the look's
 * @source JCGM 101:2008, 7
 */
export function judgedCandidate(
  space: SearchSpace,
  judge: Judge,
  made: OnSteps,
  {
    judged,
    offsets,
    atLeast = 0,
  }: { readonly judged: readonly number[]; readonly offsets: Float64Array; readonly atLeast?: number },
): Candidate {
  const change = rowShifts(space, made.strokes, offsets)
  const noises = moveNoises(space, judge, made)
  const sure = judged.map((i) => ({ i, chance: sureness(space, i, change, noises) }))
  // the least sure first: it settles most draws
  const order = sure.sort((a, b) => a.chance - b.chance).map(({ i }) => i)
  if (atLeast > 0 && judge.draws > 2 * firstLook) {
    const look = chanceOf(space, { ...judge, draws: firstLook }, order, change, noises)
    if (look < atLeast - lookDoubt) return { ...made, chance: look }
  }
  return { ...made, chance: chanceOf(space, judge, order, change, noises) }
}

/**
 * The chance of the least sure row, as if each spread were normal: all rows together are no surer. Cheap.
 *
 * @source own derivation: docs/methods/moves.md
 */
export function leastSure(
  space: SearchSpace,
  judge: Judge,
  made: OnSteps,
  { judged, offsets }: { readonly judged: readonly number[]; readonly offsets: Float64Array },
): number {
  const change = rowShifts(space, made.strokes, offsets)
  const noises = moveNoises(space, judge, made)
  return judged.reduce((least, i) => Math.min(least, sureness(space, i, change, noises)), 1)
}

/** Chance that these rows are inside together after these changes. */
export function chanceOf(
  space: SearchSpace,
  judge: Judge,
  rows: readonly number[],
  change: Float64Array,
  noises: readonly NamedNoise[],
): number {
  const drawn = noises.map((noise) => noise.draw())
  return chanceInside(
    rows.map((i) => ({
      drawn: judge.readings[i]!,
      change: change[i]!,
      low: space.rows[i]!.limit!.low,
      high: space.rows[i]!.limit!.high,
      noises: noises.flatMap(({ effect }, n) =>
        effect[i] === 0 ? [] : [{ drawn: drawn[n]!, effect: effect[i]! }],
      ),
    })),
    judge.draws,
  )
}

/** Chance of one row to be inside, as if its spread were normal: no set of rows is surer than its least. */
function sureness(
  space: SearchSpace,
  i: number,
  change: Float64Array,
  noises: readonly NamedNoise[],
): number {
  const { now, limit } = space.rows[i]!
  let variance = standardUncertainty(now) ** 2
  for (const noise of noises) variance += (noise.effect[i]! * noise.spread) ** 2
  const spread = Math.sqrt(variance) || 1e-12
  const value = now.value + change[i]!
  return normalCdf((limit!.high - value) / spread) - normalCdf((limit!.low - value) / spread)
}
