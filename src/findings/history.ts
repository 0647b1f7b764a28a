import { choleskyOf } from '../measure/index.ts'
import { type BoxedIntegral, boxedIntegral } from './boxed-integral.ts'
import type { EvidenceRow, EvidenceRows } from './evidence-rows.ts'
import type { Knob } from './knobs.ts'
import { fourWheels, heightAt } from './vehicle-vector.ts'
import type { VehicleModel } from './vehicle-model.ts'
import type { VehicleWay } from './vehicle-way.ts'

/**
 * What may have happened to the adjusters: somebody set the angles inside before it happened, or after it, or they stand
 * anywhere.
 */
export type Story = 'set before' | 'set after' | 'anywhere'

/** Columns of what was read and of what the limits say, one under the other, in units of their joint errors. */
export interface History {
  readonly story: Story
  /** An effect in those units; what it does to the rows of the limits goes by the story. */
  readonly column: (now: Float64Array) => Float64Array
  /** The same of an effect that came after the setting in every story. */
  readonly lately: (now: Float64Array) => Float64Array
  /** An adjuster that stood half its range lower when the angles were set. */
  readonly since: (knob: number) => Float64Array
  readonly knobs: readonly Float64Array[]
  readonly residual: Float64Array
  /** How many of the first rows are limits. */
  readonly limits: number
  /** Log density of the rows at no effect and no knob, less its squares. */
  readonly logScale: number
  /** Log of the chance of the limits alone, over all places of the adjusters: what the rest is divided by. */
  readonly logSet: number
}

/** Keeps an adjuster that nothing was read about from having no end. @source own choice */
const weak = 0.01

/** One more unknown beside the adjusters: a fault's size, in units of its spread. */
export interface Unknown {
  readonly column: Float64Array
  readonly mean: number
  readonly low: number
  readonly high: number
}

/**
 * The joint distribution of readings and limits in one story: reading errors, points of the model, making, springs and
 * adjusters that were seen are folded into one covariance; adjusters that nobody saw stay as unknowns in their box.
 *
 * @param now the vehicle at the heights that it has; `sound` at its design heights
 * @source own derivation: docs/methods/findings.md
 */
export function historyOf(
  story: Story,
  {
    rows,
    knobs,
    now,
    sound,
  }: {
    readonly rows: EvidenceRows
    readonly knobs: readonly Knob[]
    readonly now: VehicleModel
    readonly sound: VehicleModel
  },
): History {
  const { read, limits, noise } = rows
  const waysOf = knobs.map((knob): VehicleWay => ({ axles: { [knob.end]: knob.way } }))
  const soundRates = waysOf.map((way) => sound.rate(way))
  const nowRates = waysOf.map((way) => now.rate(way))
  const setRows =
    story === 'anywhere' ? [] : limits.filter((row) => isSet(row, soundRates, knobs))
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
  // what the maker drew has its adjusters in the middle
  const drawn = Float64Array.from(sound.numbers)
  knobs.forEach((knob, k) => {
    const middle = (knob.low + knob.high) / 2
    for (let i = 0; i < drawn.length; i++) drawn[i]! += middle * soundRates[k]![i]!
  })
  const residual = Float64Array.from(
    [...limits, ...setRows, ...read].map(({ value }) => value),
  )
  const expected = stack(drawn, story === 'set after' ? level : sound.numbers, level)
  for (let i = 0; i < n; i++) residual[i]! -= expected[i]!
  const covariance = Array.from({ length: n }, () => new Array<number>(n).fill(0))
  limits.forEach(({ design }, i) => { covariance[i]![i] = design * design })
  setRows.forEach(({ set }, i) => { covariance[limits.length + i]![limits.length + i] = set * set })
  noise.forEach((line, i) => { line.forEach((x, j) => { covariance[m + i]![m + j] = x }) })
  const spread = (column: Float64Array): void => {
    for (let i = 0; i < n; i++) {
      const x = column[i]!
      if (x === 0) continue
      for (let j = 0; j < n; j++) covariance[i]![j]! += x * column[j]!
    }
  }
  now.ofModel.forEach((column, k) => { spread(stack(sound.ofModel[k]!, past.ofModel[k]!, column)) })
  now.ofMaking.forEach((column, k) => { spread(stack(null, past.ofMaking[k]!, column)) })
  // a sound vehicle stood at its own springs when it was set
  now.springs.forEach((column, k) => { spread(stack(null, past.springs[k]!, column)) })
  const free: Float64Array[] = []
  knobs.forEach((knob, k) => {
    // a sleeve has no middle: the maker's figure may be with it either way round
    if (knob.adjuster.kind === 'offset sleeve')
      spread(stack(scaled(soundRates[k]!, knob.half / Math.sqrt(2)), null, null))
    const column = stack(null, pastRates[k]!, nowRates[k]!)
    if (knob.known === null) free.push(scaled(column, knob.half))
    else spread(scaled(column, knob.known))
  })
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
  const freeWhite = free.map(white)
  const residualWhite = white(residual)
  const logDet = (to: number): number => {
    let sum = 0
    for (let i = 0; i < to; i++) sum += Math.log(triangle[i]![i]!)
    return -sum - 0.5 * to * Math.log(2 * Math.PI)
  }
  const set = integrate({
    knobs: freeWhite.map((column) => column.subarray(0, m)),
    unseen: knobs.filter((knob) => knob.known === null),
    residual: residualWhite.subarray(0, m),
    unknowns: [],
  })
  return {
    story,
    column: (rate) => white(stack(null, story === 'set after' ? rate : null, rate)),
    lately: (rate) => white(stack(null, null, rate)),
    since: (knob) => white(scaled(stack(null, pastRates[knob]!, null), -knobs[knob]!.half)),
    knobs: freeWhite,
    residual: residualWhite,
    limits: m,
    logScale: logDet(n),
    logSet: set.log + logDet(m),
  }
}

/** Log density of what was read, given the limits, with some unknowns beside the adjusters; and where all of them lie. */
export function logEvidence(
  history: History,
  knobs: readonly Knob[],
  unknowns: readonly Unknown[],
): BoxedIntegral {
  const unseen = knobs.filter((knob) => knob.known === null)
  const all = integrate({ knobs: history.knobs, unseen, residual: history.residual, unknowns })
  return { ...all, log: all.log + history.logScale - history.logSet }
}

interface Task {
  readonly knobs: readonly Float64Array[]
  readonly unseen: readonly Knob[]
  readonly residual: Float64Array
  readonly unknowns: readonly Unknown[]
}

/** The integral over adjusters in their box and unknowns in theirs; adjusters come first. */
function integrate({ knobs, unseen, residual, unknowns }: Task): BoxedIntegral {
  const columns = [...knobs, ...unknowns.map(({ column }) => column)]
  const n = columns.length
  const precision = new Float64Array(n * n)
  const pull = new Float64Array(n)
  const [low, high] = [new Float64Array(n), new Float64Array(n)]
  let constant = -0.5 * dot(residual, residual)
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) precision[i * n + j] = precision[j * n + i] = dot(columns[i]!, columns[j]!)
    pull[i] = dot(columns[i]!, residual)
    const knob = unseen[i]
    if (knob) {
      precision[i * n + i]! += weak
      low[i] = knob.low / knob.half
      high[i] = knob.high / knob.half
      constant -= Math.log(high[i]! - low[i]!)
      continue
    }
    const unknown = unknowns[i - knobs.length]!
    precision[i * n + i]! += 1
    pull[i]! += unknown.mean
    low[i] = unknown.low
    high[i] = unknown.high
    constant -= 0.5 * (unknown.mean ** 2 + Math.log(2 * Math.PI))
  }
  if (n === 0) return { log: constant, mean: pull, variance: low }
  const found = boxedIntegral(precision, pull, low, high)
  return { ...found, log: found.log + constant }
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

type Numbers = Float64Array | null

/** Least change, over half the range of an adjuster, of an angle that is set by it, rad. @source own choice */
const setBy = 0.001

const isSet = (row: EvidenceRow, rates: readonly Float64Array[], knobs: readonly Knob[]): boolean =>
  knobs.some((knob, k) => Math.abs(times(row, rates[k]!)) * knob.half > setBy)

const times = ({ of }: EvidenceRow, numbers: Float64Array): number => dot(of, numbers)

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!
  return sum
}

const scaled = (column: Float64Array, k: number): Float64Array => column.map((x) => k * x)
