import { strokeOf } from '../../../src/adjust/index.ts'
import type { ReadingName, Side } from '../../../src/linkage/index.ts'
import { choleskyOf, covariance, type Measured } from '../../../src/measure/index.ts'
import { bounded } from './bounded.ts'
import { scatter } from './frequencies.ts'
import { madeNames } from './made-axle.ts'
import { type AxleState, sides } from './true-axle.ts'
import { readingsOf, type TrueVehicle, turnTo, wheels } from './true-vehicle.ts'
import { halfRange, type Knob, knobsOf, settingOf, withSettings } from './turn-knobs.ts'

/** What a job has of a reading: how it was read, and what it is called. */
export interface Row {
  readonly name: string
  readonly read: Measured
}

/** How well an adjuster's mark was read, in its own unit; null when nobody looked. */
export type MarkSpread = (axle: number, knob: Knob) => number | null

const degree = Math.PI / 180
type Vector = number[]

/**
 * How far a fault takes the readings from what a healthy vehicle could show, in standard deviations: the Mahalanobis
 * distance over the errors of reading and all that differs from vehicle to vehicle, with the adjusters turned, inside
 * their ranges, to make it least. 2 and more is a visible fault.
 *
 * @param sheetGives whether the sheet has limits for a reading: else the model's own angle is not known
 */
export function distanceOf({
  healthy,
  faulty,
  rows,
  markSpread,
  sheetGives,
  play,
}: {
  readonly healthy: TrueVehicle
  readonly faulty: TrueVehicle
  readonly rows: readonly Row[]
  readonly markSpread: MarkSpread
  readonly sheetGives: (name: ReadingName) => boolean
  /** Squared distance that measured play adds by itself. */
  readonly play: number
}): number {
  const at = (vehicle: TrueVehicle, turns: boolean): Vector => valuesOf(vehicle, rows, turns)
  const base = at(healthy, true)
  const effect = at(faulty, true).map((x, i) => x - base[i]!)
  const still = (vehicle: TrueVehicle): Vector => at(vehicle, false)
  const quiet = still(healthy)
  const change = (vehicle: TrueVehicle, per: number): Vector =>
    still(vehicle).map((x, i) => (x - quiet[i]!) / per)
  const nuisance = [
    ...springColumns(healthy, change),
    ...madeColumns(healthy, change, rows),
    ...modelColumns(rows, sheetGives),
  ]
  const square = rows.map((a, i) =>
    rows.map((b, j) => {
      let sum = covariance(a.read, b.read) + (i === j ? 1e-12 : 0)
      for (const column of nuisance) sum += column[i]! * column[j]!
      return sum
    }),
  )
  const l = choleskyOf(square)
  const white = (v: Vector): Vector => {
    const out: Vector = []
    for (let i = 0; i < v.length; i++) {
      let sum = v[i]!
      for (let j = 0; j < i; j++) sum -= l[i]![j]! * out[j]!
      out.push(sum / l[i]![i]!)
    }
    return out
  }
  const want = white(effect)
  const turned = knobColumns(healthy, change, markSpread)
  const marks = turned.filter(({ mark }) => mark !== null).length
  let next = 0
  const columns = turned.map(({ column, mark }) => {
    const tail: Vector = new Array<number>(marks).fill(0)
    if (mark !== null) tail[next++] = 1 / mark
    return [...white(column), ...tail]
  })
  const all = [...want, ...new Array<number>(marks).fill(0)]
  const x = bounded({
    columns,
    want: all,
    low: turned.map(({ low }) => low),
    high: turned.map(({ high }) => high),
  })
  const left = all.map((w, i) => w - columns.reduce((sum, c, k) => sum + c[i]! * x[k]!, 0))
  return Math.sqrt(left.reduce((sum, y) => sum + y * y, play))
}

function valuesOf(vehicle: TrueVehicle, rows: readonly Row[], turns: boolean): Vector {
  const { angles, heights, setBack } = readingsOf(vehicle)
  return rows.map(({ name }) => {
    if (name === 'set-back') return setBack
    if (name.startsWith('turn ')) return turns ? (turnTo(vehicle, name.slice(5) as Side) ?? 0) : 0
    if (name.endsWith(' height')) return heights[name.slice(0, -7) as keyof typeof heights]
    return angles[name as ReadingName]!
  })
}

type Change = (vehicle: TrueVehicle, per: number) => Vector

/** Springs of a healthy vehicle: each by itself, and both of an axle. */
function springColumns(vehicle: TrueVehicle, change: Change): Vector[] {
  const step = 0.004
  const put = (list: readonly string[], sd: number): Vector => {
    const springs = { ...vehicle.springs }
    for (const wheel of list as (keyof typeof springs)[]) springs[wheel] += step
    return change({ ...vehicle, springs }, step / sd)
  }
  return [
    ...wheels.map((wheel) => put([wheel], scatter.spring)),
    put(['front left', 'front right'], scatter.springs),
    put(['rear left', 'rear right'], scatter.springs),
  ]
}

/** What production scatters, of both sides: the right one's columns are the left one's over again. */
function madeColumns(vehicle: TrueVehicle, change: Change, rows: readonly Row[]): Vector[] {
  const list: Vector[] = []
  const both = (left: Vector, end: string): void => {
    const place = new Map(rows.map(({ name }, i) => [name, i]))
    const right = left.map(() => 0)
    for (const [i, { name }] of rows.entries()) {
      const over = name.startsWith(`${end} left`) ? place.get(name.replace('left', 'right')) : undefined
      if (over !== undefined) right[over] = left[i]!
      else if (name === 'set-back') right[i] = -left[i]!
    }
    list.push(left, right)
  }
  for (const [i, axle] of vehicle.axles.entries()) {
    const withState = (edit: (state: AxleState) => void): TrueVehicle => {
      const state = structuredClone(vehicle.states[i]!)
      edit(state)
      return { ...vehicle, states: vehicle.states.map((one, k) => (k === i ? state : one)) }
    }
    const step = 0.0005
    for (const [where, name] of madeNames(axle))
      for (const k of [0, 1, 2]) {
        const by: [number, number, number] = [0, 0, 0]
        by[k] = step
        both(
          change(
            withState((state) => state.displaced.left.push({ [where]: { [name]: by } })),
            step / scatter.production,
          ),
          axle.end,
        )
      }
    if ('layout' in axle.drawn) continue
    const turned = 0.001
    for (const [name, sd] of [
      ['camber', scatter.axleCamber],
      ['toe', scatter.axleToe],
      ['pinCamber', scatter.axleCamber],
      ['pinCaster', scatter.axleCamber],
    ] as const)
      for (const side of sides)
        list.push(
          change(
            withState((state) => {
              state.whole[side][name] += turned
            }),
            turned / sd,
          ),
        )
    for (const k of [0, 1, 2, 3])
      list.push(
        change(
          withState((state) => {
            state.links[k]! += step
          }),
          step / scatter.production,
        ),
      )
  }
  return list
}

/** What is not known of the model: the same on both sides. */
function modelColumns(rows: readonly Row[], sheetGives: (name: ReadingName) => boolean): Vector[] {
  const sd: Readonly<Record<string, number>> = {
    camber: scatter.designCamber,
    toe: scatter.designToe,
    caster: 2.5 * degree,
    sai: 2.5 * degree,
  }
  const list: Vector[] = []
  for (const end of ['front', 'rear'])
    for (const [angle, spread] of Object.entries(sd)) {
      const known = sheetGives(`${end} left ${angle}` as ReadingName)
      list.push(
        rows.map(({ name }) =>
          name.startsWith(end) && name.endsWith(angle) ? (known ? 0.03 * degree : spread) : 0,
        ),
      )
    }
  const turn = rows.map(({ name }) => (name.startsWith('turn ') ? 1 * degree : 0))
  const each = sides.map((side) => rows.map(({ name }) => (name === `turn ${side}` ? 0.3 * degree : 0)))
  return [...list, turn, ...each]
}

interface KnobColumn {
  readonly column: Vector
  readonly low: number
  readonly high: number
  /** Spread of the mark, in the column's unit. */
  readonly mark: number | null
}

/** What each adjuster can do from where it stands; unit: half its stroke, or a sleeve's whole tilt each way. */
function knobColumns(vehicle: TrueVehicle, change: Change, markSpread: MarkSpread): KnobColumn[] {
  return vehicle.axles.flatMap((axle, i) => {
    const state = vehicle.states[i]!
    const put = (edited: AxleState): TrueVehicle => ({
      ...vehicle,
      states: vehicle.states.map((one, k) => (k === i ? edited : one)),
    })
    return knobsOf(axle).flatMap((knob): KnobColumn[] => {
      const { adjuster } = knob
      const now = settingOf(state, knob)
      const spread = markSpread(i, knob)
      if (adjuster.kind === 'offset sleeve') {
        const step = 0.002
        return (['pinCamber', 'pinCaster'] as const).map((name) => {
          const edited = structuredClone(state)
          edited.whole[knob.on as Side][name] += step
          const at = adjuster.tilt * (name === 'pinCamber' ? Math.cos(now) : Math.sin(now))
          return {
            column: change(put(edited), step / adjuster.tilt),
            low: -1 - at / adjuster.tilt,
            high: 1 - at / adjuster.tilt,
            mark: spread,
          }
        })
      }
      const [a, b] = adjuster.range.map((end) => strokeOf(adjuster, end)) as [number, number]
      const half = (b - a) / 2
      const by = 0.05 * halfRange(knob) * (now > adjuster.range[0] + halfRange(knob) ? -1 : 1)
      const stroke = strokeOf(adjuster, now)
      const column = change(
        put(withSettings(state, [knob], [now + by])),
        (strokeOf(adjuster, now + by) - stroke) / half,
      )
      return [
        {
          column,
          low: (a - stroke) / half,
          high: (b - stroke) / half,
          mark: spread === null ? null : Math.max(0.01, spread / halfRange(knob)),
        },
      ]
    })
  })
}
