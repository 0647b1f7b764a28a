import { Refusal } from '../quantity/index.ts'
import { constraintRows, rowsRoom } from './constraint-rows.ts'
import type { Followed } from './follow.ts'
import { hingeTooShort } from './hinge-pose.ts'
import { partsOf } from './layout-parts.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Mechanism } from './mechanism.ts'
import { lengthAt } from './numeric-form.ts'
import type { Drive } from './points.ts'
import { solveLinear } from './solve-linear.ts'
import { spokenPlace } from './spoken-place.ts'
import { moveState } from './walk.ts'

/** Which link keeps a corner from a drive, and how much longer (+) or shorter (−) it would have to be. */
interface ShortLink {
  /** Name of the link, or `strut`. */
  readonly link: string
  /** m; for the strut how far its line passes beside the top mount. */
  readonly missing: number
}

/** The refusal for a drive past the end of the way: where the way ends, which link is in the way, by how much. */
export function unreachable(m: Mechanism, drive: Drive, end: Followed): Refusal<LinkageRefusal> {
  const { travel, rack } = drive
  if (m.points.layout === 'semi-trailing arm') return hingeTooShort(m, travel)
  const { link, missing } = shortLink(m, drive, end)
  const ends = [
    ...(travel !== 0 || rack === 0 ? [`travel ${signed(end.share * travel)}`] : []),
    ...(rack !== 0 ? [`rack ${signed(end.share * rack)}`] : []),
  ].join(', ')
  const by = `${(Math.abs(missing) * 1000).toFixed(1)} mm`
  const why =
    link === 'strut'
      ? `there the strut would pass beside its top mount by about ${by}`
      : `there ${spokenPlace(link)} is too ${missing > 0 ? 'short' : 'long'} by about ${by}`
  return new Refusal<LinkageRefusal>({
    code: 'unreachable',
    at: link,
    given: `travel ${signed(travel)}, rack ${signed(rack)}`,
    sentence: `The wheel cannot be at travel ${signed(travel)} with the rack at ${signed(rack)}: ${why}. Coming from the design pose the way ends at ${ends}.`,
    remedy: 'Ask for less than that, or measure this link and the points it joins again.',
  })
}

const signed = (metres: number): string => {
  const text = (metres * 1000).toFixed(2)
  return `${metres > 0 ? `+${text}` : text} mm`
}

/**
 * At the turning point the links can carry a load among themselves; the one that carries most of it is in the way.
 * What it misses at the drive: its own error where the others keep their lengths and it comes closest.
 *
 * @source own derivation: docs/methods/travel-limits.md
 */
function shortLink(m: Mechanism, { travel, rack }: Drive, end: Followed): ShortLink {
  const rows = rowsRoom()
  const look = (state: Float64Array, share: number): void => {
    state[2] = m.home[2] + share * travel
    constraintRows(m.facts, m.form, state, share * rack, rows)
  }
  const state = Float64Array.from(end.state)
  look(state, end.share)
  const load = selfLoad(rows.jacobian, m.size)
  let free = 0
  for (let i = 1; i < 5; i++) if (Math.abs(load[i]!) > Math.abs(load[free]!)) free = i
  const strutFree = m.facts.strut && free > 2
  const weight = (i: number): number => (i === free || (strutFree && i > 2) ? 1 : 100)
  for (let part = 1; part <= 8; part++)
    closest(m, state, weight, () => look(state, end.share + ((1 - end.share) * part) / 8), rows)
  const legs = partsOf(m.points.layout).legs
  if (strutFree) return { link: 'strut', missing: Math.hypot(rows.error[3]!, rows.error[4]!) }
  const length = m.form[lengthAt + free]!
  return {
    link: legs[free]!.name,
    missing: Math.sqrt(length * length + 2 * length * rows.error[free]!) - length,
  }
}

/** Left null vector of the 5 × 5 Jacobian by inverse iteration. */
function selfLoad(jacobian: Float64Array, size: number): Float64Array {
  let load = Float64Array.of(1, 1.1, 0.9, 1.2, 0.8)
  for (let turn = 0; turn < 3; turn++) {
    const a = new Float64Array(25)
    for (let i = 0; i < 5; i++)
      for (let k = 0; k < 5; k++)
        a[5 * k + i] = k < 2 ? jacobian[6 * i + k]! : jacobian[6 * i + k + 1]! / size
    const next = Float64Array.from(load)
    if (solveLinear(a, next, 5) === 0) return load
    const norm = Math.hypot(...next)
    if (!Number.isFinite(norm) || norm === 0) return load
    load = next.map((x) => x / norm)
  }
  return load
}

/** Weighted least squares of the five errors by Levenberg–Marquardt, height and rack held. */
function closest(
  m: Mechanism,
  state: Float64Array,
  weight: (i: number) => number,
  look: () => void,
  rows: ReturnType<typeof rowsRoom>,
): void {
  const cost = (): number => rows.error.reduce((sum, e, i) => sum + (weight(i) * e) ** 2, 0)
  look()
  let now = cost()
  let damping = 1e-3
  for (let turn = 0; turn < 40 && damping < 1e8; turn++) {
    const a = new Float64Array(25)
    const b = new Float64Array(5)
    for (let i = 0; i < 5; i++) {
      const w = weight(i) ** 2
      const row = [0, 1, 3, 4, 5].map((k) => rows.jacobian[6 * i + k]! / (k < 2 ? 1 : m.size))
      for (let j = 0; j < 5; j++) {
        b[j]! -= w * row[j]! * rows.error[i]!
        for (let k = 0; k < 5; k++) a[5 * j + k]! += w * row[j]! * row[k]!
      }
    }
    for (let j = 0; j < 5; j++) a[6 * j]! += damping
    if (solveLinear(a, b, 5) === 0) return
    const before = Float64Array.from(state)
    moveState(state, b, m.size)
    look()
    const next = cost()
    if (next < now) {
      const gain = now - next
      now = next
      damping /= 5
      if (gain < 1e-12 * now) return
    } else {
      state.set(before)
      look()
      damping *= 4
    }
  }
}
