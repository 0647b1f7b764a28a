import type { Mechanism } from './mechanism.ts'
import { linkRows, packedSize, perLink, strutRows } from './newton-rows.ts'
import { bodyAt, lengthAt, strutTopAt } from './numeric-form.ts'
import { solveFive } from './solve-five.ts'

/** Room and fixed facts for Newton steps without allocation. @source own derivation: docs/methods/pose-of-a-corner.md */
export interface NewtonKernel {
  readonly strut: boolean
  /** First place that holds a link. */
  readonly firstLink: number
  /** Which link stands at each place. */
  readonly linkAt: Int32Array
  /** Packed number that the rack moves; −1 when none. */
  readonly rackAt: number
  readonly size: number
  /** Numbers of the corner, packed; the rack's is set by `setRack`. */
  readonly packed: Float64Array
  readonly rows: Float64Array
  readonly step: Float64Array
  /** Sign of the determinant at the design pose. */
  readonly sign: number
}

/** Most steps a warm start may take, and how far its first one may go, in sizes of the corner. */
const mostSteps = 7
const longestFirst = 0.35
/** A step this small (in sizes) leaves an error of its square. */
const small = 1e-7

/** Makes a kernel; places are given to links in the order that elimination with exchange takes at the design pose. @source own derivation: docs/methods/pose-of-a-corner.md */
export function newtonKernel(m: Mechanism): NewtonKernel {
  const { strut, rackLeg } = m.facts
  const firstLink = strut ? 2 : 0
  const k = {
    strut,
    firstLink,
    linkAt: Int32Array.from([0, 1, 2, 3, 4], (i) => (strut ? i - 2 : i)),
    rackAt: -1,
    size: m.size,
    packed: new Float64Array(packedSize),
    rows: new Float64Array(30),
    step: new Float64Array(5),
    sign: 0,
  }
  const home = Float64Array.of(...m.home, 1, 0, 0, 0)
  packForm(k, m.design)
  fillRows(k, home)
  k.linkAt.set(stableOrder(k.rows, firstLink).map((place) => k.linkAt[place]!))
  packForm(k, m.design)
  fillRows(k, home)
  const sign = Math.sign(solveFive(k.rows, k.step))
  const place = k.linkAt.indexOf(rackLeg, firstLink)
  packForm(k, m.form)
  return { ...k, sign, rackAt: rackLeg < 0 ? -1 : perLink * place + 4 }
}

/** Packs the numbers of a form. No allocation. */
export function packForm(
  k: Pick<NewtonKernel, 'strut' | 'firstLink' | 'linkAt' | 'packed'>,
  form: Float64Array,
): void {
  const { packed, linkAt, firstLink } = k
  for (let i = firstLink; i < 5; i++) {
    const to = perLink * i
    const from = linkAt[i]!
    for (let j = 0; j < 3; j++) {
      packed[to + j] = form[3 * from + j]!
      packed[to + 3 + j] = form[bodyAt + 3 * from + j]!
    }
    packed[to + 6] = form[lengthAt + from]! * form[lengthAt + from]!
  }
  if (k.strut) packStrut(packed, form)
}

/**
 * Two directions across the strut, e × y and e × (e × y): about fore-and-aft and sideways, so that they eliminate
 * the wheel centre's x and y. A strut that lies along y has none, and is left to following.
 */
function packStrut(packed: Float64Array, form: Float64Array): void {
  const x = form[strutTopAt]! - form[9]!
  const y = form[strutTopAt + 1]! - form[10]!
  const z = form[strutTopAt + 2]! - form[11]!
  for (let j = 0; j < 3; j++) {
    packed[j] = form[9 + j]!
    packed[9 + j] = form[bodyAt + 9 + j]!
  }
  packed[3] = -z
  packed[4] = 0
  packed[5] = x
  packed[6] = x * y
  packed[7] = -(z * z + x * x)
  packed[8] = y * z
}

/** y of the inner point that the rack moves, as packed now; 0 where no link is steered. @source own derivation: docs/methods/pose-of-a-corner.md */
export const rackInner = (k: NewtonKernel): number => (k.rackAt < 0 ? 0 : k.packed[k.rackAt]!)

function fillRows(
  { strut, firstLink, packed, rows }: Pick<NewtonKernel, 'strut' | 'firstLink' | 'packed' | 'rows'>,
  state: Float64Array,
): void {
  linkRows(packed, state, firstLink, rows)
  if (strut) strutRows(packed, state, rows)
}

/**
 * Newton at a fixed height (state[2]) from the state given, which is moved to the solution.
 *
 * @param inner y of the inner point that the rack moves, where it stands now; ignored where no link is steered
 * @returns true when it settled, without a jump, on the side of the fold where the design pose lies
 * @source own derivation: docs/methods/pose-of-a-corner.md
 */
export function newtonSettle(k: NewtonKernel, state: Float64Array, inner: number): boolean {
  const { packed, rows, step, strut, firstLink } = k
  if (k.rackAt >= 0) packed[k.rackAt] = inner
  const toTurn = 1 / k.size
  let before = longestFirst
  for (let turn = 0; turn < mostSteps; turn++) {
    linkRows(packed, state, firstLink, rows)
    if (strut) strutRows(packed, state, rows)
    const determinant = solveFive(rows, step)
    const vx = step[0]!
    const vy = step[1]!
    const hx = 0.5 * step[2]!
    const hy = 0.5 * step[3]!
    const hz = 0.5 * step[4]!
    const far = Math.sqrt((vx * vx + vy * vy) * toTurn * toTurn + 4 * (hx * hx + hy * hy + hz * hz))
    if (!(far < before)) return false
    state[0] = state[0]! + vx
    state[1] = state[1]! + vy
    const w = state[3]!
    const x = state[4]!
    const y = state[5]!
    const z = state[6]!
    const w2 = w - hx * x - hy * y - hz * z
    const x2 = x + hx * w + hy * z - hz * y
    const y2 = y + hy * w + hz * x - hx * z
    const z2 = z + hz * w + hx * y - hy * x
    const scale = 1 / Math.sqrt(w2 * w2 + x2 * x2 + y2 * y2 + z2 * z2)
    state[3] = w2 * scale
    state[4] = x2 * scale
    state[5] = y2 * scale
    state[6] = z2 * scale
    if (far < small) return determinant * k.sign > 0
    before = 0.5 * far
  }
  return false
}

/** The order of places that elimination with row exchange takes, the first `fixed` kept. */
function stableOrder(rows: Float64Array, fixed: number): number[] {
  const a = [0, 1, 2, 3, 4].map((i) => Array.from(rows.subarray(6 * i, 6 * i + 5)))
  const scale = a.map((row) => Math.hypot(...row) || 1)
  const order = [0, 1, 2, 3, 4]
  const value = (i: number, k: number): number => Math.abs(a[order[i]!]![k]!) / scale[order[i]!]!
  for (let k = 0; k < 5; k++) {
    let p = k
    if (k >= fixed) for (let i = k + 1; i < 5; i++) if (value(i, k) > value(p, k)) p = i
    ;[order[k], order[p]] = [order[p]!, order[k]!]
    const top = a[order[k]!]!
    for (let i = k + 1; i < 5; i++) {
      const row = a[order[i]!]!
      const factor = row[k]! / top[k]!
      for (let j = k; j < 5; j++) row[j]! -= factor * top[j]!
    }
  }
  return order
}
