import type { ReadingName } from '../linkage/index.ts'
import { covarianceMatrix, type Measured, normal } from '../measure/index.ts'
import type { FindingsProblem } from './findings-problem.ts'
import { rowMaker } from './row-maker.ts'
import { bodyMarkSpread } from './scatter.ts'
import { treadRow } from './tread-wear.ts'
import {
  camberGaugeAt,
  fourWheels,
  heightAt,
  padAt,
  playAt,
  playName,
  playSlots,
  steerGaugeAt,
} from './vehicle-vector.ts'

/** A number that was read, or that a limit stands for: how it comes from the vehicle's numbers, and what it is. */
export interface EvidenceRow {
  readonly name: string
  readonly value: number
  readonly of: Float64Array
}

/** What was read, and what the limits say about the vehicle when it was sound. */
export interface EvidenceRows {
  readonly read: readonly EvidenceRow[]
  /** Covariance of `read`. */
  readonly noise: readonly (readonly number[])[]
  readonly limits: readonly LimitRow[]
}

/** A limit: its middle is what the maker's model has; what can be set was set about there. */
interface LimitRow extends EvidenceRow {
  /** How near the middle the model's own figure is. */
  readonly design: number
  /** How near the middle it was set. */
  readonly set: number
}

/** Makers print limits about their own figure, rounded: so near, as a share of the half width, and rad. @source own choice */
const shareOfDesign = 0.15
const roundingOfDesign = 0.0008
/** Whoever sets angles stops somewhere inside: as a share of the half width. @source own choice */
const shareOfHalf = 0.45
/** Whoever set them read them with an error of his own, rad. @source from memory, common practice, no source */
const setterError = 0.0015
/** Swing of a sound joint, m. @source from memory, common practice, no source */
const soundPlay = { mean: 0.0002, spread: 0.0002 } as const
/** An angle of exactly nothing is not believed, rad and m. */
const floorOfNoise = 1e-5

/**
 * Everything measured as rows on the vehicle's numbers. Camber, SAI and caster are read against the floor, the model
 * stands in the body: a body that leans or pitches on its springs comes in here, pads and gauges too.
 *
 * @param straight the vehicle's numbers as they stand
 * @source own derivation: docs/methods/findings.md, signs.md
 */
export function evidenceRows(problem: FindingsProblem, straight: Float64Array): EvidenceRows {
  const rowOf = rowMaker(problem, straight)
  const list: (EvidenceRow & { readonly measured: Measured })[] = []
  const put = (name: string, of: Float64Array | null, measured: Measured | undefined | null): void => {
    if (of && measured) list.push({ name, of, measured, value: measured.value })
  }
  for (const [name, measured] of Object.entries(problem.readings))
    put(name, rowOf.reading(name as ReadingName), measured)
  for (const wheel of fourWheels) {
    const read = problem.heights[wheel]
    const mark = normal(bodyMarkSpread, `mark on the body, ${wheel}`)
    put(
      `${wheel} height`,
      rowOf.one(heightAt(wheel)),
      read && { value: read.value, parts: [...read.parts, ...mark.parts] },
    )
  }
  for (const side of ['left', 'right'] as const)
    put(`toe-out on turns, ${side}`, rowOf.turn(side), problem.turns[side])
  put('set-back', rowOf.setBack(), problem.setBack)
  problem.play.slice(0, playSlots).forEach(({ wheel, joint, swing }, slot) => {
    const usual = normal(soundPlay.spread, `sound play of ${playName(wheel, joint)}`)
    put(`play, ${playName(wheel, joint)}`, rowOf.one(playAt(slot)), {
      value: swing.value - soundPlay.mean,
      parts: [...swing.parts, ...usual.parts],
    })
  })
  const bare = (name: ReadingName): Float64Array | null => {
    const of = rowOf.reading(name)
    if (of) clearGauges(of)
    return of
  }
  for (const tread of problem.treads) {
    const row = treadRow(tread, problem, bare)
    if (row) put(row.name, row.of, row.measured)
  }
  const noise = covarianceMatrix(
    list.map(({ measured, value }) =>
      measured.parts.length > 0 ? measured : normal(floorOfNoise, 'rounding', value),
    ),
  )
  list.forEach((_, i) => {
    noise[i]![i]! += floorOfNoise ** 2
  })
  const limits = Object.entries(problem.limits).flatMap(([name, limit]) => {
    const of = rowOf.reading(name as ReadingName)
    // a limit with one side only says nothing about a middle
    if (!of || !limit || !Number.isFinite(limit.high - limit.low)) return []
    clearGauges(of)
    const half = (limit.high - limit.low) / 2
    const design = Math.hypot(shareOfDesign * half, roundingOfDesign)
    const set = Math.hypot(shareOfHalf * half, setterError)
    return [{ name, of, value: (limit.high + limit.low) / 2, design, set }]
  })
  return { read: list.map(({ name, of, value }) => ({ name, of, value })), noise, limits }
}

/** What was wrong with the reading was not wrong with the wheel. */
function clearGauges(of: Float64Array): void {
  for (const wheel of fourWheels) of[padAt(wheel)] = 0
  of[camberGaugeAt] = 0
  of[steerGaugeAt] = 0
}
