import { type AxleBar, type AxleState, axleState, designPlace } from './axle-state.ts'
import type { SolidAxle } from './solid-axle.ts'
import type { AxleDrive } from './solid-axle-points.ts'

/** Where following an axle ended: at share 1, or barred at an earlier one. */
export interface AxleFollowed {
  readonly share: number
  /** The last state that was reached; null when not even the start is there. */
  readonly state: AxleState | null
  /** What bars the way past `share`; null when it arrived. */
  readonly bar: AxleBar | null
}

/** Parts of the axle's size (heave) and radians (roll, drop) that one step may take. */
const longest = 0.05

/** A drive on the straight way between two. */
export function between(from: AxleDrive, to: AxleDrive, share: number): AxleDrive {
  const mixed = (name: 'heave' | 'roll' | 'drop'): number =>
    share === 1 ? to[name] : from[name] + share * (to[name] - from[name])
  return { heave: mixed('heave'), roll: mixed('roll'), drop: mixed('drop') } as AxleDrive
}

/**
 * The axle followed along the straight way in heave, roll and drop, in steps that shrink where the way ends.
 *
 * @source own derivation: docs/methods/solid-axle.md
 */
export function followAxle(
  a: SolidAxle,
  from: AxleDrive,
  to: AxleDrive,
  start: AxleState | null = null,
): AxleFollowed {
  const first = start ?? axleState(a, from, designPlace(a))
  if ('at' in first) return { share: 0, state: null, bar: first }
  const far = Math.max(
    Math.abs(to.heave - from.heave) / a.size,
    Math.abs(to.roll - from.roll),
    Math.abs(to.drop - from.drop),
  )
  const most = Math.min(1, longest / far)
  let [share, state, step] = [0, first, most]
  let bar: AxleBar | null = null
  // a step may fail only because it is long: it is halved, and grows again, so that only a real end stops the way
  while (share < 1 && step > 1e-13) {
    const target = Math.min(1, share + step)
    const there = axleState(a, between(from, to, target), state.place)
    if ('at' in there) {
      bar = there
      step /= 2
    } else {
      share = target
      state = there
      step = Math.min(most, 2 * step)
    }
  }
  return { share, state, bar: share < 1 ? (bar ?? { at: 'location' }) : null }
}
