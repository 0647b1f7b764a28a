import { combine, exact, type Measured, propagate, rectangular } from '../measure/index.ts'
import { type Metre, metre, type Newton, newton } from '../quantity/index.ts'
import { bearingDiameter } from './bearing-diameter.ts'
import { inOrder, positive } from './fasten-refusal.ts'
import { forceLever } from './force-lever.ts'
import { type Friction, frictionOf } from './friction.ts'
import type { Thread } from './thread.ts'

/** A thread as it is met: nobody measured its friction. @source definition */
export interface PreloadJob {
  readonly thread: Thread
  /** Between the threads; classes B and C together when left out. */
  readonly threadFriction?: Friction | undefined
  /** Under the head or nut; as between the threads when left out. */
  readonly bearingFriction?: Friction | undefined
  /** Mean diameter of the ring the head rubs on; from plain to flanged when left out. */
  readonly bearing?: { readonly low: Metre; readonly high: Metre } | undefined
}

/** Preload with what makes it uncertain. @source definition */
export interface Preload {
  /** At the middle of friction, with its spread through the slopes (too straight at the far ends). */
  readonly preload: Measured
  /** All friction at its highest, and at its lowest: nothing outside them. */
  readonly low: Newton
  readonly high: Newton
}

/**
 * What a torque pulls in the bolt: F = T / (P/2π + 0.577·μ_th·d2 + μ_b·D_b/2), friction anywhere in its range.
 *
 * @param torque at the fastener; its own spread (the wrench) is carried too
 * @throws {Refusal} `not-positive`, `not-finite`, `bad-range`
 * @source ISO 16047:2005 (from memory); JCGM 100:2008, 5.1.2; derived in docs/methods/preload.md
 * @example preloadOf(exact(90), { thread: parseThread('M12'), threadFriction: { low: 0.1, high: 0.14 } }).low // 37250.7
 */
export function preloadOf(torque: Measured, job: PreloadJob): Preload {
  positive(torque.value, 'torque')
  const { inputs, leverAt, least, most } = factsOf(job)
  const spread = propagate(([t, ...at]) => t! / leverAt(at), [torque, ...inputs])
  return { preload: spread, low: newton(torque.value / most), high: newton(torque.value / least) }
}

/**
 * The torque that pulls this preload, with friction anywhere in its range: to compare with what is stated, never to
 * put in its place.
 *
 * @throws {Refusal} `not-positive`, `not-finite`, `bad-range`
 * @source ISO 16047:2005 (from memory); derived in docs/methods/preload.md
 * @example torqueFor(newton(40000), { thread: parseThread('M12'), threadFriction: { low: 0.1, high: 0.14 } }).value // 80.828
 */
export function torqueFor(preload: Newton, job: PreloadJob): Measured {
  positive(preload, 'preload')
  const { inputs, leverAt } = factsOf(job)
  return combine([{ of: propagate(leverAt, inputs), times: preload }])
}

function factsOf({
  thread,
  threadFriction = frictionOf(null),
  bearingFriction = threadFriction,
  bearing,
}: PreloadJob) {
  const ring = bearing ?? bearingDiameter(thread.diameter)
  inOrder(threadFriction, 'thread friction')
  inOrder(bearingFriction, 'bearing friction')
  inOrder(ring, 'bearing diameter')
  const leverAt = ([th, b, d]: readonly number[]) =>
    forceLever({ thread, threadFriction: th!, bearingFriction: b!, bearingDiameter: metre(d!) })
  return {
    inputs: [
      within(threadFriction, 'friction between the threads'),
      within(bearingFriction, 'friction under the head'),
      within(ring, 'diameter the head rubs on'),
    ],
    leverAt,
    least: leverAt([threadFriction.low, bearingFriction.low, ring.low]),
    most: leverAt([threadFriction.high, bearingFriction.high, ring.high]),
  }
}

/** Anywhere in a range; a range of no width is exact. */
const within = ({ low, high }: { readonly low: number; readonly high: number }, source: string): Measured =>
  low === high ? exact(low) : rectangular((high - low) / 2, source, (low + high) / 2)
