import { dot } from './dot.ts'
import type { EvidenceRow, EvidenceRows } from './evidence-rows.ts'
import type { Foreseen, History, Story } from './history.ts'
import type { Knob } from './knobs.ts'
import { integralOf, knobProducts } from './log-evidence.ts'
import { scaledColumn } from './scaled-column.ts'
import type { VehicleModel } from './vehicle-model.ts'
import { fourWheels, heightAt } from './vehicle-vector.ts'
import type { VehicleWay } from './vehicle-way.ts'
import { type Scatter, whitening } from './whitening.ts'

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
    const own = scaledColumn(present, spreads)
    scatter.push({ rows: scaledColumn(stack(drawn, set, present), spreads), present: own })
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
      put(scaledColumn(soundRates[k]!, knob.half / Math.SQRT2), null, new Float64Array(nowRates[k]!.length))
    if (knob.known === null) {
      free.push(scaledColumn(stack(null, pastRates[k]!, nowRates[k]!), knob.half))
      knobsNow.push(scaledColumn(nowRates[k]!, knob.half))
    } else put(null, scaledColumn(pastRates[k]!, knob.known), scaledColumn(nowRates[k]!, knob.known))
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
  const { white, logDet, standing } = whitening({
    own,
    noise: noise.map((line) => line.map((x) => x * spreads ** 2)),
    scatter,
  })
  const knobColumns = free.map(white)
  const residualWhite = white(residual)
  const low = Float64Array.from(unseen, (knob) => knob.low / knob.half)
  const high = Float64Array.from(unseen, (knob) => knob.high / knob.half)
  const told = (to: number) => {
    const first = {
      knobs: knobColumns.map((c) => c.subarray(0, to)),
      residual: residualWhite.subarray(0, to),
    }
    return { ...first, products: knobProducts({ ...first, low, high }), low, high }
  }
  const all = told(n)
  return {
    story,
    column: (rate) => white(stack(null, story === 'set after' ? rate : null, rate)),
    lately: (rate) => white(stack(null, null, rate)),
    since: (knob) => white(scaledColumn(stack(null, pastRates[knob]!, null), -knobs[knob]!.half)),
    knobs: knobColumns,
    knobsNow,
    low,
    high,
    residual: residualWhite,
    products: all.products,
    edges: integralOf(all, []).edges,
    limits: m,
    logScale: logDet(n),
    logSet: integralOf(told(m), []).log + logDet(m),
    standing,
    further: (row) => foreseen(row, { level, scatter, white }),
  }
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
