import { type Metre, metre, type Radian, rad } from '../quantity/index.ts'
import { fastenRefusal, finite, positive } from './fasten-refusal.ts'

/** Slots of a nut and through holes of its stud. @source definition */
export interface Slots {
  /** Equally spaced, 3 or more; 6 on most. */
  readonly slots: number
  /** Direction of each through hole across the stud; [0] for one. */
  readonly holes: readonly Radian[]
}

/** Where the nut stands. @source definition */
export interface SlotView extends Slots {
  /** Direction of any one slot; counted, like the holes, in the sense that tightens. */
  readonly slotAt: Radian
}

const FEWEST = 3
/** A slot this near is at its hole: the rounding of an angle, not a feeler gauge. */
const SAME = 1e-9

/**
 * How far the nut turns forward until a slot meets a hole: 0 when one stands there already. A hole goes through, so
 * both its ends count.
 *
 * @returns rad, ≥ 0, less than `largestAdvance` and at most 2π/slots
 * @throws {Refusal} `bad-count`, `not-finite`
 * @source own derivation: docs/methods/castle-nut.md
 * @example angleToSlot({ slots: 6, holes: [deg(0)], slotAt: deg(-52) }) * 180 / Math.PI // 52
 */
export function angleToSlot({ slotAt, ...nut }: SlotView): Radian {
  const step = stepOf(nut)
  finite(slotAt, 'slot')
  return rad(Math.min(...meetings(nut).map((at) => phase(at - slotAt, step))))
}

/**
 * The furthest that the next slot can be away, wherever the nut stands: 60° for six slots and one hole.
 *
 * @returns rad
 * @throws {Refusal} `bad-count`, `not-finite`
 * @source own derivation: docs/methods/castle-nut.md
 * @example largestAdvance({ slots: 6, holes: [deg(0), deg(90)] }) * 180 / Math.PI // 30
 */
export function largestAdvance(nut: Slots): Radian {
  const step = stepOf(nut)
  const phases = meetings(nut)
    .map((at) => phase(at, step))
    .sort((a, b) => a - b)
  const gaps = phases.map((at, i) => (phases[i + 1] ?? phases[0]! + step) - at)
  return rad(Math.max(...gaps))
}

/**
 * How far a nut moves along its thread: P·θ/2π.
 *
 * @throws {Refusal} `not-positive`, `not-finite`
 * @source definition
 * @example axialAdvance({ pitch: mm(1.5), angle: deg(60) }) // 0.00025
 */
export function axialAdvance({ pitch, angle }: { readonly pitch: Metre; readonly angle: Radian }): Metre {
  return metre((positive(pitch, 'pitch') * finite(angle, 'angle')) / (2 * Math.PI))
}

/** Both ends of every hole. */
const meetings = ({ holes }: Slots) => holes.flatMap((hole) => [hole, hole + Math.PI])

/** Within one step, 0 ≤ … < step. */
function phase(angle: number, step: number): number {
  const rest = angle - Math.floor(angle / step) * step
  return rest > step - SAME || rest < SAME ? 0 : rest
}

function stepOf({ slots, holes }: Slots): number {
  for (const hole of holes) finite(hole, 'hole')
  if (Number.isInteger(slots) && slots >= FEWEST && holes.length > 0) return (2 * Math.PI) / slots
  throw fastenRefusal({
    code: 'bad-count',
    at: 'slots',
    given: `${slots} slots, ${holes.length} holes`,
    sentence: `A nut with ${slots} slots on a stud with ${holes.length} holes takes no pin.`,
    remedy: 'Count the slots of the nut (most have 6) and the holes through the stud.',
  })
}
