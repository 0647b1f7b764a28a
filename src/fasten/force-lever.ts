import { type Metre, metre } from '../quantity/index.ts'
import { notNegative, positive } from './fasten-refusal.ts'
import type { Thread } from './thread.ts'

/** Friction met by a turning nut or bolt. @source definition */
export interface FrictionJob {
  readonly thread: Pick<Thread, 'pitch' | 'pitchDiameter'>
  /** Coefficient between the threads. */
  readonly threadFriction: number
  /** Coefficient under the turning head or nut. */
  readonly bearingFriction: number
  /** Mean diameter of the ring the head or nut rubs on. */
  readonly bearingDiameter: Metre
}

/** 1/(2 cos 30°) of a 60° profile, as ISO 16047 rounds it. */
const FLANK = 0.577

/**
 * Torque per force of a bolt being tightened, the long form:
 *
 *     T/F = P/2π + 0.577·μ_th·d2 + μ_b·D_b/2
 *
 * @returns m (N·m per N)
 * @throws {Refusal} `not-positive`, `not-finite`
 * @assumes 60° threads, slow turning, no prevailing torque
 * @source ISO 16047:2005 (Kellermann and Klein; from memory); derived in docs/methods/preload.md
 * @example forceLever({ thread: parseThread('M10'), threadFriction: 0.12, bearingFriction: 0.12, bearingDiameter: mm(13.1) }) // 0.00164967
 */
export function forceLever({ thread, threadFriction, bearingFriction, bearingDiameter }: FrictionJob): Metre {
  const muThread = notNegative(threadFriction, 'thread friction')
  const muBearing = notNegative(bearingFriction, 'bearing friction')
  const ring = positive(bearingDiameter, 'bearing diameter')
  return metre(
    thread.pitch / (2 * Math.PI) + FLANK * muThread * thread.pitchDiameter + (muBearing * ring) / 2,
  )
}
