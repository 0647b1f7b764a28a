import type { Adjuster } from '../../../src/adjust/index.ts'
import type { Side } from '../../../src/linkage/index.ts'
import { type AxleState, sides, type TrueAxle } from './true-axle.ts'

/** One adjuster at its place. */
export interface Knob {
  readonly on: Side | 'both'
  readonly adjuster: Adjuster
}

/** Every adjuster of an axle at each of its places. */
export const knobsOf = (axle: TrueAxle): readonly Knob[] => [
  ...sides.flatMap((on) => axle.adjusters.map((adjuster) => ({ on, adjuster }))),
  ...axle.axleAdjusters.map((adjuster) => ({ on: 'both' as const, adjuster })),
]

/** Middle of an adjuster's range, where points lie as drawn; and half the range. */
export const middleOf = ({ adjuster }: Knob): number =>
  (adjuster.kind === 'shims' ? adjuster.asDrawn : undefined) ?? (adjuster.range[0] + adjuster.range[1]) / 2
export const halfRange = ({ adjuster }: Knob): number => (adjuster.range[1] - adjuster.range[0]) / 2

/** A state with other settings. */
export function withSettings(
  state: AxleState,
  knobs: readonly Knob[],
  settings: ArrayLike<number>,
): AxleState {
  const next = {
    left: { ...state.settings.left },
    right: { ...state.settings.right },
    both: { ...state.settings.both },
  }
  for (const [i, { on, adjuster }] of knobs.entries()) next[on][adjuster.id] = settings[i]!
  return { ...state, settings: next }
}

export const settingOf = (state: AxleState, { on, adjuster }: Knob): number =>
  state.settings[on][adjuster.id] ?? 0

/** Kept inside the range. */
export const inRange = ({ adjuster }: Knob, setting: number): number =>
  Math.min(adjuster.range[1], Math.max(adjuster.range[0], setting))
