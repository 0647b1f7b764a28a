import { isWholeAxle } from '../corner/index.ts'
import { type AxleEnd, type Side, sumOfDisplacements } from '../linkage/index.ts'
import type { AxleModel, WholeWay } from './axle-model.ts'
import { cornerAxleModel } from './corner-axle-model.ts'
import type { ExaminedAxle, ExaminedWheel } from './findings-problem.ts'
import type { Knob } from './knobs.ts'
import { axleSpringSpread, springSpread } from './scatter.ts'
import {
  axleNumbers,
  camberGaugeAt,
  fourWheels,
  heightAt,
  padAt,
  playAt,
  playSlots,
  steerGaugeAt,
  vehicleNumbers,
} from './vehicle-vector.ts'
import type { VehicleWay } from './vehicle-way.ts'
import { wholeAxleModel } from './whole-axle-model.ts'

const sides = ['left', 'right'] as const

/** A vehicle at one ride height: its numbers and how fast each way changes them (`vehicle-vector.ts`). */
export interface VehicleModel {
  readonly numbers: Float64Array
  readonly rate: (way: VehicleWay) => Float64Array
  /** The same over so much of the way, exact for what it does to an axle; null where that cannot stand so. */
  readonly chord: (way: VehicleWay, size: number) => Float64Array | null
  /** Columns at one standard deviation: of the models' points, of making, of springs and load. */
  readonly ofModel: readonly Float64Array[]
  readonly ofMaking: readonly Float64Array[]
  readonly springs: readonly Float64Array[]
  /** One wheel higher against the body, per m. */
  readonly lifts: readonly Float64Array[]
}

/** Wheel heights by spring: four like springs under a stiff body hold it on a flat floor, only a warp of theirs is lost. */
const warp: readonly number[] = [0.5, -0.5, -0.5, 0.5]
const liftOf = (wheel: number, spring: number): number =>
  (wheel === spring ? 1 : 0) - warp[wheel]! * warp[spring]!

/**
 * The vehicle with its wheels at given heights, linear about there.
 *
 * @param travel height of each wheel above design, m
 * @throws {Refusal} what the linkage says where an axle cannot stand so
 * @source own derivation: docs/methods/findings.md
 */
export function vehicleModel(
  axles: readonly ExaminedAxle[],
  knobs: readonly Knob[],
  {
    travel,
    turns,
    plays,
  }: {
    readonly travel: Readonly<Record<ExaminedWheel, number>>
    readonly turns: boolean
    /** Joints whose play was measured, by `playName`. */
    readonly plays: readonly string[]
  },
): VehicleModel {
  const models = axles.map((axle) => modelOf(axle, knobs, travel, turns))
  const numbers = new Float64Array(vehicleNumbers)
  models.forEach((model, i) => {
    numbers.set(model.numbers, i * axleNumbers)
  })
  for (const wheel of fourWheels) numbers[heightAt(wheel)] = travel[wheel]
  const placed = (i: number, values: Float64Array): Float64Array => {
    const all = new Float64Array(vehicleNumbers)
    all.set(values, i * axleNumbers)
    return all
  }
  const lifts = fourWheels.map((wheel) => {
    const [end, side] = wheel.split(' ') as [AxleEnd, Side]
    const i = axles.findIndex((axle) => axle.end === end)
    const all = i < 0 ? new Float64Array(vehicleNumbers) : placed(i, models[i]!.lift(side))
    all[heightAt(wheel)] = 1
    return all
  })
  const bySpring = fourWheels.map((_, spring) =>
    sumOf(lifts.map((lift, wheel) => [lift, liftOf(wheel, spring)] as const)),
  )
  const rate = (way: VehicleWay): Float64Array => {
    const all = new Float64Array(vehicleNumbers)
    axles.forEach(({ end }, i) => {
      const own = way.axles?.[end]
      if (own) all.set(models[i]!.rate(own), i * axleNumbers)
    })
    fourWheels.forEach((wheel, k) => {
      const shorter = way.springs?.[wheel] ?? 0
      if (shorter !== 0) add(all, bySpring[k]!, shorter)
      all[padAt(wheel)]! += way.pads?.[wheel] ?? 0
    })
    plays.forEach((name, slot) => {
      if (slot < playSlots) all[playAt(slot)]! += way.play?.[name] ?? 0
    })
    all[camberGaugeAt]! += way.camberGauge ?? 0
    all[steerGaugeAt]! += way.steerGauge ?? 0
    return all
  }
  return {
    numbers,
    rate,
    chord: (way, size) => {
      const all = rate(way)
      for (const [i, { end }] of axles.entries()) {
        const own = way.axles?.[end]
        const chord = own && models[i]!.chord(own, size)
        if (own && !chord) return null
        if (chord) all.set(chord, i * axleNumbers)
      }
      return all
    },
    lifts,
    ofModel: models.flatMap((model, i) => model.ofModel.map((c) => placed(i, c))),
    ofMaking: models.flatMap((model, i) => model.ofMaking.map((c) => placed(i, c))),
    springs: [
      ...bySpring.map((column) => column.map((x) => x * springSpread)),
      ...[0, 2].map((k) =>
        sumOf([
          [bySpring[k]!, axleSpringSpread],
          [bySpring[k + 1]!, axleSpringSpread],
        ]),
      ),
    ],
  }
}

function add(into: Float64Array, what: Float64Array, times: number): void {
  for (let i = 0; i < into.length; i++) into[i]! += times * what[i]!
}

function sumOf(terms: readonly (readonly [Float64Array, number])[]): Float64Array {
  const sum = new Float64Array(vehicleNumbers)
  for (const [column, times] of terms) add(sum, column, times)
  return sum
}

function modelOf(
  axle: ExaminedAxle,
  knobs: readonly Knob[],
  travel: Readonly<Record<ExaminedWheel, number>>,
  turns: boolean,
): AxleModel {
  const { end, corner } = axle
  const own = knobs.filter((knob) => knob.end === end)
  const at = { left: travel[`${end} left`], right: travel[`${end} right`] }
  if (isWholeAxle(corner.layout))
    return wholeAxleModel(corner, { travel: at, set: setOf(own), turns: turns && end === 'front' })
  const displaced = (side: Side) => sumOfDisplacements(own.flatMap((knob) => knob.standing[side] ?? []))
  return cornerAxleModel(corner, {
    travel: at,
    displaced: { left: displaced('left'), right: displaced('right') },
    turns: turns && end === 'front',
  })
}

/** What the settings of a whole axle add up to. */
function setOf(knobs: readonly Knob[]): WholeWay {
  let [tieRod, dragLink] = [0, 0]
  const links: [number, number, number, number] = [0, 0, 0, 0]
  const tilt = { left: { camber: 0, caster: 0 }, right: { camber: 0, caster: 0 } }
  const shim = { left: { camber: 0, toe: 0 }, right: { camber: 0, toe: 0 } }
  for (const { way, at } of knobs) {
    const { whole } = way
    if (!whole) continue
    tieRod += at * (whole.tieRod ?? 0)
    dragLink += at * (whole.dragLink ?? 0)
    whole.links?.forEach((x, i) => {
      links[i as 0]! += at * x
    })
    for (const side of sides) {
      tilt[side].camber += at * (whole.tilt?.[side]?.camber ?? 0)
      tilt[side].caster += at * (whole.tilt?.[side]?.caster ?? 0)
      shim[side].camber += at * (whole.shim?.[side]?.camber ?? 0)
      shim[side].toe += at * (whole.shim?.[side]?.toe ?? 0)
    }
  }
  return { tieRod, dragLink, links, tilt, shim }
}
