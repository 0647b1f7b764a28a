import { describe, expect, test } from 'vitest'
import type { Corner } from '../../../src/corner/index.ts'
import { familiesOf } from '../../../src/findings/families-of.ts'
import type { FindingsProblem, Suspect } from '../../../src/findings/index.ts'
import { knobsOf } from '../../../src/findings/knobs.ts'
import { rowMaker } from '../../../src/findings/row-maker.ts'
import { treadRow } from '../../../src/findings/tread-wear.ts'
import { vehicleModel } from '../../../src/findings/vehicle-model.ts'
import { heightAt } from '../../../src/findings/vehicle-vector.ts'
import type { VehicleWay } from '../../../src/findings/vehicle-way.ts'
import type { ReadingName } from '../../../src/linkage/index.ts'
import { normal } from '../../../src/measure/index.ts'
import {
  coilAxle,
  coilLower,
  fiveLink,
  leafAxle,
  nothingFound,
  problemOf,
  strut,
  torsionBar,
  trailing,
  twistBeam,
} from './invented-problem.ts'

const degree = Math.PI / 180
const level = { 'front left': 0, 'front right': 0, 'rear left': 0, 'rear right': 0 }
type Settings = FindingsProblem['axles'][number]['settings']

/** A vehicle of these axles, and how its readings go with a way. */
function vehicleOf(
  corners: readonly Corner[],
  settings: Settings = { left: {}, right: {}, both: {} },
  turns = false,
) {
  const problem: FindingsProblem = {
    ...nothingFound,
    axles: corners.map((corner) => ({ end: corner.axle, corner, settings })),
    readings: { 'front left camber': normal(0.001, 'one', 0) },
  }
  const knobs = problem.axles.flatMap(knobsOf)
  const model = vehicleModel(problem.axles, knobs, { travel: level, turns, plays: [] })
  const rowOf = rowMaker(problem, model.numbers)
  const times = (of: Float64Array | null, by: Float64Array): number =>
    of ? of.reduce((sum, x, i) => sum + x * by[i]!, 0) : Number.NaN
  return {
    problem,
    knobs,
    model,
    families: familiesOf(problem, knobs),
    reading: (name: ReadingName, way: VehicleWay): number => times(rowOf.reading(name), model.rate(way)),
    turn: (side: 'left' | 'right', way: VehicleWay): number => times(rowOf.turn(side), model.rate(way)),
    setBack: (way: VehicleWay): number => times(rowOf.setBack(), model.rate(way)),
    height: (wheel: 'front left' | 'front right' | 'rear left' | 'rear right', way: VehicleWay): number =>
      model.rate(way)[heightAt(wheel)]!,
  }
}
const wayOf = (vehicle: ReturnType<typeof vehicleOf>, suspect: Partial<Suspect>): VehicleWay =>
  vehicle.families.find(({ suspect: one }) =>
    Object.entries(suspect).every(([name, value]) => one[name as keyof Suspect] === value),
  )!.main

describe('FI14 what each suspect does', () => {
  test('FI14 rates are the differences of the numbers, adjuster by adjuster', () => {
    for (const corner of [strut, coilLower, torsionBar, fiveLink, trailing, leafAxle, twistBeam]) {
      const knobs = knobsOf({ end: corner.axle, corner, settings: { left: {}, right: {}, both: {} } })
      for (const { on, adjuster } of knobs) {
        if (adjuster.kind === 'offset sleeve') continue
        const middle = (adjuster.range[0] + adjuster.range[1]) / 2
        const step = (adjuster.range[1] - adjuster.range[0]) / 400
        const at = (setting: number) => {
          const settings = { left: {}, right: {}, both: {}, [on]: { [adjuster.id]: setting } } as Settings
          return vehicleOf([corner], settings, true)
        }
        const [below, here, above] = [at(middle - step), at(middle), at(middle + step)]
        const strokes = [below, above].map(
          ({ knobs: all }) => all.find((k) => k.on === on && k.adjuster.id === adjuster.id)!.at,
        )
        const knob = here.knobs.find((k) => k.on === on && k.adjuster.id === adjuster.id)!
        const rate = here.model.rate({ axles: { [corner.axle]: knob.way } })
        const difference = above.model.numbers.map(
          (x, i) => (x - below.model.numbers[i]!) / (strokes[1]! - strokes[0]!),
        )
        const largest = Math.max(...difference.map(Math.abs))
        for (let i = 0; i < rate.length; i++)
          expect(Math.abs(rate[i]! - difference[i]!), `${corner.id} ${on} ${adjuster.id} ${i}`).toBeLessThan(
            0.003 * largest + 1e-6,
          )
      }
    }
  })
  test('FI14 another model stands as it is drawn: points elsewhere change no camber and toe at design height', () => {
    for (const corner of [strut, coilLower, torsionBar, fiveLink, trailing, leafAxle, twistBeam, coilAxle]) {
      const { model } = vehicleOf([corner])
      // the last two are the model’s own camber and toe; adjusters stand in the middle, which is not quite as drawn
      const points = model.ofModel.slice(0, -2)
      expect(points.length).toBeGreaterThan(5)
      for (const [i, column] of points.entries())
        for (const k of [0, 3, 5, 8])
          expect(Math.abs(column[k]!) / degree, `${corner.id}, column ${i}, number ${k}`).toBeLessThan(0.03)
    }
  })
  test('FI14 an axle that stays on the floor keeps its camber when a spring sags', () => {
    const vehicle = vehicleOf([leafAxle])
    const sag: VehicleWay = { springs: { 'front left': 0.02 } }
    const roll = (0.02 * 0.5) / (2 * 0.826)
    for (const side of ['left', 'right'] as const)
      expect(Math.abs(vehicle.reading(`front ${side} camber`, sag))).toBeLessThan(0.05 * roll)
    const heights = (['front left', 'front right', 'rear left', 'rear right'] as const).map((wheel) =>
      vehicle.height(wheel, { springs: { 'front left': 1 } }),
    )
    expect(heights).toEqual([0.75, 0.25, 0.25, -0.25])
    expect(vehicle.height('front left', wayOf(vehicle, { kind: 'sagged spring', side: 'left' }))).toBe(0.75)
  })
  test('FI14 a bush clamped hanging holds its corner up; nose down is less caster', () => {
    const vehicle = vehicleOf([strut, trailing])
    expect(
      vehicle.height(
        'front right',
        wayOf(vehicle, { kind: 'bush clamped hanging', axle: 'front', side: 'right' }),
      ),
    ).toBe(-0.75)
    const nose: VehicleWay = { springs: { 'front left': 0.01, 'front right': 0.01 } }
    const body = vehicle.model.rate(nose)[1]!
    const pitch = 0.01 / 2.6
    expect(vehicle.reading('front left caster', nose) - body).toBeCloseTo(-pitch, 4)
  })
  test('FI14 gauges and floor read as signs.md has it', () => {
    const vehicle = vehicleOf([strut, trailing])
    const zero = wayOf(vehicle, { kind: 'gauge not zeroed', at: 'camber gauge' })
    for (const wheel of ['front left', 'front right', 'rear left', 'rear right'] as const)
      expect(vehicle.reading(`${wheel} camber`, zero)).toBe(1)
    const plates = wayOf(vehicle, { kind: 'gauge not zeroed', at: 'steer gauge' })
    expect(vehicle.reading('front left caster', plates)).toBeGreaterThan(0)
    expect(vehicle.reading('front right caster', plates)).toBeLessThan(0)
    // 5 mm across 1.5 m: 0.19° on each wheel, left camber too little, right too much; SAI the other way
    const pad: VehicleWay = { pads: { 'front left': 0.005 } }
    expect(vehicle.reading('front left camber', pad) / degree).toBeCloseTo(-0.193, 2)
    expect(vehicle.reading('front right camber', pad) / degree).toBeCloseTo(0.193, 2)
    expect(vehicle.reading('front left sai', pad)).toBeGreaterThan(0)
    const front: VehicleWay = { pads: { 'front left': 0.01, 'front right': 0.01 } }
    expect(vehicle.reading('front left caster', front)).toBeGreaterThan(0)
    expect(vehicle.reading('front right caster', front)).toBeGreaterThan(0)
  })
  test('FI14 a rack to the left turns a rod behind the axle as signs.md has it, and the other wheel the other way', () => {
    const vehicle = vehicleOf([strut])
    const rack = wayOf(vehicle, { kind: 'rack off centre' })
    expect(vehicle.reading('front left toe', rack)).toBeGreaterThan(0)
    expect(vehicle.reading('front right toe', rack)).toBeLessThan(0)
  })
  test('FI14 a cross-member takes from one side what it gives the other; turned to the left, its left wheel goes back', () => {
    const vehicle = vehicleOf([strut])
    const sideways = wayOf(vehicle, { kind: 'cross-member shifted sideways' })
    const [left, right] = (['left', 'right'] as const).map((side) =>
      vehicle.reading(`front ${side} camber`, sideways),
    )
    expect(left! + right!).toBeCloseTo(0, 9)
    expect(Math.abs(left!)).toBeGreaterThan(1)
    expect(vehicle.setBack(wayOf(vehicle, { kind: 'cross-member turned' }))).toBeLessThan(-0.3)
  })
  test('FI14 an axle that is turned to the left points both its wheels to the left', () => {
    for (const corner of [coilAxle, twistBeam, trailing]) {
      if (corner === trailing) continue
      const vehicle = vehicleOf([corner])
      const turned = wayOf(vehicle, { kind: 'axle turned' })
      expect(vehicle.reading('rear left toe', turned), corner.id).toBeLessThan(0)
      expect(vehicle.reading('rear right toe', turned), corner.id).toBeGreaterThan(0)
      expect(vehicle.reading('thrust', turned), corner.id).toBeLessThan(-0.2)
    }
    // its left bush gone, the beam's left end goes back
    const vehicle = vehicleOf([twistBeam])
    expect(vehicle.reading('thrust', wayOf(vehicle, { kind: 'collapsed bush', side: 'left' }))).toBeLessThan(
      0,
    )
    expect(
      vehicle.reading('thrust', wayOf(vehicle, { kind: 'collapsed bush', side: 'right' })),
    ).toBeGreaterThan(0)
  })
  test('FI14 what wears under a standing wheel lets its top lean in, and rolling drags it to toe-out', () => {
    for (const corner of [strut, coilLower, torsionBar]) {
      const vehicle = vehicleOf([corner])
      for (const { suspect, main } of vehicle.families) {
        if (!/^(worn ball joint|loose wheel bearing)$/.test(suspect.kind) || suspect.side !== 'left') continue
        if (/tie/.test(suspect.at ?? '')) expect(vehicle.reading('front left toe', main)).toBeLessThan(0)
        else expect(vehicle.reading('front left camber', main), `${corner.id} ${suspect.at}`).toBeLessThan(0)
      }
    }
    // an upper arm is pushed in, a lower one pulled out; the spring's share of it presses the pivot down
    for (const [corner, at] of [
      [coilLower, 'upper-front-bush-nut'],
      [torsionBar, 'upper-rear-bolt'],
      [strut, 'lower-front-bolt'],
      [coilLower, 'lower-front-bolt'],
    ] as const) {
      const vehicle = vehicleOf([corner])
      const gone = wayOf(vehicle, { kind: 'collapsed bush', side: 'left', at })
      expect(vehicle.reading('front left camber', gone), `${corner.id} ${at}`).toBeLessThan(0)
    }
    const axle = vehicleOf([leafAxle])
    expect(
      axle.reading('front left camber', wayOf(axle, { kind: 'worn kingpin', side: 'left' })),
    ).toBeLessThan(0)
  })
  test('FI14 a washer that was put in the other way round stands as far on the other side', () => {
    const settings = { left: { 'upper-front-eccentric': 50 * degree }, right: {}, both: {} }
    const vehicle = vehicleOf([torsionBar], settings)
    const knob = vehicle.knobs.find(
      ({ on, adjuster }) => on === 'left' && adjuster.id === 'upper-front-eccentric',
    )!
    const per = vehicle.reading('front left camber', { axles: { front: knob.way } })
    const reversed = wayOf(vehicle, {
      kind: 'eccentric fitted the wrong way round',
      side: 'left',
      at: knob.adjuster.id,
    })
    expect(vehicle.reading('front left camber', reversed) * 0.001).toBeCloseTo(-2 * knob.at * per, 9)
  })
  test('FI14 a tread that is worn outside speaks of a wheel that leans out or toes in', () => {
    const problem = problemOf(strut)
    const row = rowMaker(problem, vehicleOf([strut]).model.numbers).reading
    const tread = (outer: number, inner: number) =>
      treadRow(
        {
          wheel: 'front left',
          outer: normal(0.0001, 'outer', outer),
          middle: normal(0.0001, 'middle', 0.005),
          inner: normal(0.0001, 'inner', inner),
        },
        problem,
        row,
      )!
    const [camber, toe] = [row('front left camber')!, row('front left toe')!]
    const along = (by: Float64Array): number =>
      tread(0.004, 0.006).of.reduce((sum, x, i) => sum + x * by[i]!, 0)
    expect(along(camber)).toBeLessThan(0)
    expect(along(toe)).toBeLessThan(0)
    expect(tread(0.004, 0.006).measured.value).toBeLessThan(tread(0.006, 0.004).measured.value)
    expect(treadRow({ ...treadOf(), wheel: 'rear left' }, problem, row)).toBeNull()
  })
})

const treadOf = () => ({
  wheel: 'front left' as const,
  outer: normal(0.0001, 'outer', 0.005),
  middle: normal(0.0001, 'middle', 0.005),
  inner: normal(0.0001, 'inner', 0.005),
})
