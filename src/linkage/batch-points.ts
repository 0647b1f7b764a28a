import { type Metre, Refusal } from '../quantity/index.ts'
import { axisPlaces, batchFlag, batchStride, writeState } from './batch-row.ts'
import { hingeState } from './hinge-pose.ts'
import { partsOf } from './layout-parts.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Mechanism } from './mechanism.ts'
import { newtonKernel, newtonSettle, packForm, rackInner } from './newton-kernel.ts'
import { normalBlock } from './normal-block.ts'
import { bodyAt, lengthAt, strutTopAt } from './numeric-form.ts'
import type { Drive } from './points.ts'
import { checkedDrive, followTo } from './pose-at.ts'
import { unreachable } from './unreachable.ts'

/** What is drawn. @source definition */
export interface PointDraws {
  readonly drive: Drive
  /** Standard deviation of every coordinate, or of the coordinates of each named point (others then stay), m. */
  readonly spread: Metre | Readonly<Record<string, Metre>>
  readonly draws: number
  readonly seed: number
}

/**
 * What errors of the hard points do to the angles at a drive: in each draw every point is moved by normal errors,
 * the links take the lengths of the moved points (they are the true ones), and the pose is asked at the drive.
 * Camber and toe at design are held. No allocation per draw.
 *
 * @param out per draw `batchStride` numbers as `batchPoses`; a draw that does not reach the drive is flagged
 * @returns how many draws were answered
 * @throws {Refusal} `bad-input`; `not-finite`; `unreachable` when the undisturbed corner does not reach the drive
 * @source JCGM 101:2008, 7 (propagation by draws)
 * @example batchPoints(m, { drive: ride, spread: mm(1), draws: 2, seed: 1 }, out) // 2
 */
export function batchPoints(
  m: Mechanism,
  { drive, spread, draws, seed }: PointDraws,
  out: Float64Array,
): number {
  const { travel, rack } = checkedDrive(drive)
  if (!Number.isInteger(seed) || seed < 0 || seed >= 2 ** 32)
    throw new Refusal<LinkageRefusal>({
      code: 'bad-input',
      at: 'seed',
      given: String(seed),
      sentence: `${seed} is no seed.`,
      remedy: 'Give a whole number from 0 to 4 294 967 295.',
    })
  if (!Number.isInteger(draws) || draws < 1 || out.length < draws * batchStride)
    throw new Refusal<LinkageRefusal>({
      code: 'bad-input',
      at: 'draws',
      given: `${draws} draws, room for ${out.length} numbers`,
      sentence: `${draws} draws need a whole number of at least 1 and ${batchStride} numbers of room each.`,
      remedy: 'Give room for every answer.',
    })
  const found = followTo(m, { travel, rack })
  if (!found.arrived) throw unreachable(m, { travel, rack }, found)
  const plan = drawPlan(m, spread)
  const kernel = newtonKernel(m)
  const axis = axisPlaces(m)
  const spin = Float64Array.from(m.spin)
  const form = Float64Array.from(m.form)
  const state = new Float64Array(7)
  const start = found.state
  const shifts = new Float64Array(plan.spreads.length)
  const normals = normalBlock(seed)
  const hinge = m.points.layout === 'semi-trailing arm'
  let answered = 0
  for (let i = 0; i < draws; i++) {
    const at = batchStride * i
    normals(shifts)
    for (let j = 0; j < shifts.length; j++) shifts[j] = shifts[j]! * plan.spreads[j]!
    disturb(plan, m, shifts, form)
    packForm(kernel, form)
    state.set(start)
    for (let j = 0; j < 3; j++) state[j] = start[j]! + shifts[plan.hub + j]!
    const hinged = hinge && hingeState(m, form, start[2]! + shifts[plan.hub + 2]!)
    if (hinged) {
      writeState(out, at, hinged, form, spin, axis)
      answered++
    } else if (!hinge && newtonSettle(kernel, state, rackInner(kernel) + rack)) {
      writeState(out, at, state, form, spin, axis)
      answered++
    } else {
      for (let j = 0; j < batchStride; j++) out[at + j] = 0
      out[at + 7] = batchFlag.unreachable
    }
  }
  return answered
}

/** Which number of the form belongs to which point. */
interface DrawPlan {
  /** Three per point. */
  readonly spreads: Float64Array
  /** First shift of each leg's outer and inner point, of the wheel centre, of strut and top mount. */
  readonly outer: Int32Array
  readonly inner: Int32Array
  readonly hub: number
  readonly strut: number
  readonly top: number
  readonly legs: number
}

function drawPlan(m: Mechanism, spread: PointDraws['spread']): DrawPlan {
  const parts = partsOf(m.points.layout)
  const names = [
    ...parts.body,
    ...parts.knuckle.filter((name) => !['strutTop', 'eyeFront', 'eyeRear'].includes(name)),
  ]
  const size = (name: string): number => (typeof spread === 'number' ? spread : (spread[name] ?? 0))
  const unknown =
    typeof spread === 'number' ? [] : Object.keys(spread).filter((name) => !names.includes(name))
  const sizes = names.map(size)
  if (unknown.length > 0 || !sizes.every((s) => s >= 0 && s < Number.POSITIVE_INFINITY))
    throw new Refusal<LinkageRefusal>({
      code: 'bad-input',
      at: 'spread',
      given: unknown.join(', '),
      sentence: 'A spread belongs to no point of this corner, or is not a length of 0 or more.',
      remedy: `Use the points ${names.join(', ')}.`,
    })
  const place = (name: string): number => 3 * names.indexOf(name)
  if (m.points.layout === 'semi-trailing arm')
    return {
      spreads: Float64Array.from(sizes.flatMap((s) => [s, s, s])),
      // its front eye is held by three links that move with the bush
      outer: new Int32Array(3).fill(place('innerFront')),
      inner: new Int32Array(3).fill(place('innerFront')),
      hub: place('wheelCentre'),
      strut: place('innerFront'),
      top: place('innerRear'),
      legs: 3,
    }
  return {
    spreads: Float64Array.from(sizes.flatMap((s) => [s, s, s])),
    outer: Int32Array.from(parts.legs, (leg) => place(leg.outer)),
    inner: Int32Array.from(parts.legs, (leg) => place(leg.inner)),
    hub: place('wheelCentre'),
    strut: place('strutLower'),
    top: place('topMount'),
    legs: parts.legs.length,
  }
}

/** The numbers of the corner with its points shifted; lengths by how much the design distance changes. */
function disturb(plan: DrawPlan, m: Mechanism, shifts: Float64Array, form: Float64Array): void {
  const { design, form: nominal } = m
  const { hub, outer, inner, legs } = plan
  for (let i = 0; i < legs; i++) {
    let before = 0
    let after = 0
    for (let j = 0; j < 3; j++) {
      const o = shifts[outer[i]! + j]!
      const n = shifts[inner[i]! + j]!
      const k = 3 * i + j
      form[k] = nominal[k]! + o - shifts[hub + j]!
      form[bodyAt + k] = nominal[bodyAt + k]! + n
      const apart = design[k]! + m.home[j]! - design[bodyAt + k]!
      before += apart * apart
      after += (apart + o - n) * (apart + o - n)
    }
    form[lengthAt + i] = nominal[lengthAt + i]! + Math.sqrt(after) - Math.sqrt(before)
  }
  if (legs < 5)
    for (let j = 0; j < 3; j++) {
      form[9 + j] = nominal[9 + j]! + shifts[plan.strut + j]! - shifts[hub + j]!
      form[bodyAt + 9 + j] = nominal[bodyAt + 9 + j]! + shifts[plan.top + j]!
      form[strutTopAt + j] = nominal[strutTopAt + j]! + shifts[plan.top + j]! - shifts[hub + j]!
    }
}
