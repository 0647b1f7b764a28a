import { choleskyOf } from '../measure/index.ts'
import type { EvidenceRow, EvidenceRows } from './evidence-rows.ts'
import type { Foreseen, History, Story } from './history.ts'
import type { Knob } from './knobs.ts'
import { integralOf } from './log-evidence.ts'
import type { VehicleModel } from './vehicle-model.ts'
import { fourWheels, heightAt } from './vehicle-vector.ts'
import type { VehicleWay } from './vehicle-way.ts'

type Numbers = Float64Array | null

/** Least change, over half the range of an adjuster, of an angle that is set by it, rad. @source own choice */
const setBy = 0.001

/** What a story is made from. */
export interface HistoryTask {
  readonly rows: EvidenceRows
  readonly knobs: readonly Knob[]
  /** The vehicle at the heights that it has. */
  readonly now: VehicleModel
  /** The vehicle at its design heights. */
  readonly sound: VehicleModel
  /** Every spread that is believed is taken so many times over; 1 is what is believed. */
  readonly spreads: number
}

/**
 * The joint distribution of readings and limits in one story: reading errors, points of the model, making, springs and
 * adjusters that were seen are folded into one covariance; adjusters that nobody saw stay as unknowns in their box.
 *
 * @source own derivation: docs/methods/findings.md
 */
export function historyOf(story: Story, { rows, knobs, now, sound, spreads }: HistoryTask): History {
  const { read, limits, noise } = rows
  const waysOf = knobs.map((knob): VehicleWay => ({ axles: { [knob.end]: knob.way } }))
  const soundRates = waysOf.map((way) => sound.rate(way))
  const nowRates = waysOf.map((way) => now.rate(way))
  const setRows = story === 'anywhere' ? [] : limits.filter((row) => isSet(row, soundRates, knobs))
  const m = limits.length + setRows.length
  const n = m + read.length
  const past = story === 'set after' ? now : sound
  const pastRates = story === 'set after' ? nowRates : soundRates
  /** By block: what the maker drew, what was set, what is read. */
  const stack = (drawn: Numbers, set: Numbers, present: Numbers): Float64Array => {
    const all = new Float64Array(n)
    if (drawn) for (let i = 0; i < limits.length; i++) all[i] = times(limits[i]!, drawn)
    if (set) for (let i = 0; i < setRows.length; i++) all[limits.length + i] = times(setRows[i]!, set)
    if (present) for (let i = 0; i < read.length; i++) all[m + i] = times(read[i]!, present)
    return all
  }
  // spring heights count from design: the model stands where it was measured
  const level = atDesignSprings(now)
  const residual = Float64Array.from([...limits, ...setRows, ...read], ({ value }) => value)
  const expected = stack(
    inTheMiddle(sound.numbers, knobs, soundRates),
    story === 'set after' ? level : sound.numbers,
    level,
  )
  for (let i = 0; i < n; i++) residual[i]! -= expected[i]!
  const scatter: Scatter[] = []
  const put = (drawn: Numbers, set: Numbers, present: Float64Array): void => {
    const own = scaled(present, spreads)
    scatter.push({ rows: scaled(stack(drawn, set, present), spreads), present: own })
  }
  now.ofModel.forEach((column, k) => {
    put(sound.ofModel[k]!, past.ofModel[k]!, column)
  })
  now.ofMaking.forEach((column, k) => {
    put(null, past.ofMaking[k]!, column)
  })
  // a sound vehicle stood at its own springs when it was set
  now.springs.forEach((column, k) => {
    put(null, past.springs[k]!, column)
  })
  const free: Float64Array[] = []
  const knobsNow: Float64Array[] = []
  const unseen = knobs.filter((knob) => knob.known === null)
  knobs.forEach((knob, k) => {
    // a sleeve has no middle: the maker's figure may be with it either way round
    if (knob.adjuster.kind === 'offset sleeve')
      put(scaled(soundRates[k]!, knob.half / Math.SQRT2), null, new Float64Array(nowRates[k]!.length))
    if (knob.known === null) {
      free.push(scaled(stack(null, pastRates[k]!, nowRates[k]!), knob.half))
      knobsNow.push(scaled(nowRates[k]!, knob.half))
    } else put(null, scaled(pastRates[k]!, knob.known), scaled(nowRates[k]!, knob.known))
  })
  // an unseen sleeve leans the pin by its whole tilt wherever it was set: camber and caster cannot both be met
  const missed = (row: EvidenceRow): number =>
    knobs.reduce((sum, { adjuster, known, half }, k) => {
      const sleeve = adjuster.kind === 'offset sleeve' && known === null
      return sleeve ? sum + (times(row, soundRates[k]!) * half) ** 2 / 2 : sum
    }, 0)
  const own = [
    ...limits.map(({ design }) => (spreads * design) ** 2),
    ...setRows.map((row) => spreads ** 2 * (row.set ** 2 + missed(row))),
  ]
  const { triangle, white } = whitening({
    own,
    noise: noise.map((line) => line.map((x) => x * spreads ** 2)),
    scatter,
  })
  const knobColumns = free.map(white)
  const residualWhite = white(residual)
  const low = Float64Array.from(unseen, (knob) => knob.low / knob.half)
  const high = Float64Array.from(unseen, (knob) => knob.high / knob.half)
  const set = integralOf(
    { knobs: knobColumns.map((c) => c.subarray(0, m)), low, high, residual: residualWhite.subarray(0, m) },
    [],
  )
  const logDet = (to: number): number => {
    let sum = -0.5 * to * Math.log(2 * Math.PI)
    for (let i = 0; i < to; i++) sum -= Math.log(triangle[i]![i]!)
    return sum
  }
  return {
    story,
    column: (rate) => white(stack(null, story === 'set after' ? rate : null, rate)),
    lately: (rate) => white(stack(null, null, rate)),
    since: (knob) => white(scaled(stack(null, pastRates[knob]!, null), -knobs[knob]!.half)),
    knobs: knobColumns,
    knobsNow,
    low,
    high,
    residual: residualWhite,
    edges: integralOf({ knobs: knobColumns, low, high, residual: residualWhite }, []).edges,
    limits: m,
    logScale: logDet(n),
    logSet: set.log + logDet(m),
    standing: (left) => standingOf(triangle, left, m),
    further: (row) => foreseen(row, { level, scatter, white }),
  }
}

/** One thing that scatters, at one standard deviation: on the rows, and on the vehicle as it stands. */
interface Scatter {
  readonly rows: Float64Array
  readonly present: Float64Array
}

function whitening({
  own,
  noise,
  scatter,
}: {
  readonly own: readonly number[]
  readonly noise: EvidenceRows['noise']
  readonly scatter: readonly Scatter[]
}) {
  const m = own.length
  const n = m + noise.length
  const covariance = Array.from({ length: n }, () => new Array<number>(n).fill(0))
  own.forEach((variance, i) => {
    covariance[i]![i] = variance
  })
  noise.forEach((line, i) => {
    line.forEach((x, j) => {
      covariance[m + i]![m + j] = x
    })
  })
  for (const { rows } of scatter)
    for (let i = 0; i < n; i++) {
      const x = rows[i]!
      if (x === 0) continue
      const line = covariance[i]!
      for (let j = 0; j < n; j++) line[j]! += x * rows[j]!
    }
  const triangle = choleskyOf(covariance)
  const white = (column: Float64Array): Float64Array => {
    const out = new Float64Array(n)
    for (let i = 0; i < n; i++) {
      const line = triangle[i]!
      let sum = column[i]!
      for (let j = 0; j < i; j++) sum -= line[j]! * out[j]!
      out[i] = sum / line[i]!
    }
    return out
  }
  return { triangle, white }
}

/** The rows above the limits, each against what all others say of it: K·r over the root of K's diagonal, K the precision. */
function standingOf(
  triangle: readonly (readonly number[])[],
  left: Float64Array,
  from: number,
): Float64Array {
  const n = left.length
  const back = (column: Float64Array): Float64Array => {
    const out = Float64Array.from(column)
    for (let i = n - 1; i >= 0; i--) {
      out[i]! /= triangle[i]![i]!
      for (let j = 0; j < i; j++) out[j]! -= triangle[i]![j]! * out[i]!
    }
    return out
  }
  const pulled = back(left)
  return Float64Array.from({ length: n - from }, (_, k) => {
    const i = from + k
    // column i of the inverse triangle, whose square is the precision of row i
    const column = new Float64Array(n)
    column[i] = 1 / triangle[i]![i]!
    let precision = column[i]! ** 2
    for (let r = i + 1; r < n; r++) {
      let sum = 0
      for (let j = i; j < r; j++) sum -= triangle[r]![j]! * column[j]!
      column[r] = sum / triangle[r]![r]!
      precision += column[r]! ** 2
    }
    return pulled[i]! / Math.sqrt(precision)
  })
}

function foreseen(
  row: EvidenceRow,
  {
    level,
    scatter,
    white,
  }: {
    readonly level: Float64Array
    readonly scatter: readonly Scatter[]
    readonly white: (column: Float64Array) => Float64Array
  },
): Foreseen {
  const shared = new Float64Array(scatter[0]?.rows.length ?? 0)
  let variance = 0
  for (const { rows, present } of scatter) {
    const by = times(row, present)
    variance += by * by
    if (by !== 0) for (let i = 0; i < shared.length; i++) shared[i]! += by * rows[i]!
  }
  const drawn = white(shared)
  return { expected: times(row, level), drawn, variance: variance - dot(drawn, drawn) }
}

/** The numbers of a vehicle whose springs are as new: what it was looked at, less what its heights did. */
function atDesignSprings({ numbers, lifts }: VehicleModel): Float64Array {
  const level = Float64Array.from(numbers)
  fourWheels.forEach((wheel, k) => {
    const height = numbers[heightAt(wheel)]!
    if (height === 0) return
    const lift = lifts[k]!
    for (let i = 0; i < level.length; i++) level[i]! -= height * lift[i]!
  })
  return level
}

/** The numbers of a vehicle with every adjuster in the middle of its range: what its maker drew. */
function inTheMiddle(
  numbers: Float64Array,
  knobs: readonly Knob[],
  rates: readonly Float64Array[],
): Float64Array {
  const drawn = Float64Array.from(numbers)
  knobs.forEach(({ low, high }, k) => {
    const middle = (low + high) / 2
    if (middle !== 0) for (let i = 0; i < drawn.length; i++) drawn[i]! += middle * rates[k]![i]!
  })
  return drawn
}

const isSet = (row: EvidenceRow, rates: readonly Float64Array[], knobs: readonly Knob[]): boolean =>
  knobs.some((knob, k) => Math.abs(times(row, rates[k]!)) * knob.half > setBy)

const times = ({ of }: Pick<EvidenceRow, 'of'>, numbers: Float64Array): number => dot(of, numbers)

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!
  return sum
}

const scaled = (column: Float64Array, k: number): Float64Array => column.map((x) => k * x)
