import type { JointNode } from './assembly.ts'
import type { ThreePoint } from './three-point.ts'

/** What every joint of a kind is like. @source definition */
export interface JointHabit {
  /** Tightened: run up, then final; else it is home in one go. */
  readonly threaded: boolean
  readonly taper: boolean
  /** Cracked by itself before it is opened. */
  readonly cracked: boolean
  readonly opens: ThreePoint
  readonly closes: ThreePoint
  readonly finals: ThreePoint
  readonly seized: { readonly what: string; readonly chance: number; readonly minutes: ThreePoint } | null
}

const rusted: ThreePoint = [5, 15, 60]
const habit = (
  opens: ThreePoint,
  closes: ThreePoint,
  finals: ThreePoint | null,
  more: Partial<JointHabit> = {},
): JointHabit => ({
  threaded: finals !== null,
  taper: false,
  cracked: false,
  opens,
  closes,
  finals: finals ?? closes,
  seized: null,
  ...more,
})
const bolt = habit([1, 2, 5], [0.5, 1.5, 3], [0.5, 1, 2], {
  seized: { what: 'it is seized', chance: 0.08, minutes: rusted },
})
const stud = habit([1, 2, 5], [0.5, 1.5, 3], [0.5, 1.5, 3], {
  taper: true,
  seized: { what: 'its taper does not part, or its stud spins', chance: 0.15, minutes: [5, 12, 40] },
})
const snap = (minutes: ThreePoint) => habit(minutes, minutes, null)

/**
 * What the joints of each kind take, in minutes: low, usual, high. Used until the workshop's own times are known.
 *
 * @source from memory; common practice, no source
 */
export const jointHabits: Readonly<Record<JointNode['kind'], JointHabit>> = {
  bolt,
  'eccentric bolt': habit([1, 3, 6], [1, 2, 4], [0.5, 1, 3], {
    seized: { what: 'the bolt is seized in the sleeve of its bush', chance: 0.2, minutes: [10, 30, 90] },
  }),
  'slotted bolt': bolt,
  'pinch bolt': habit([1, 3, 6], [1, 2, 3], [1, 1.5, 3], {
    seized: { what: 'the stud is seized in its clamp', chance: 0.15, minutes: [5, 15, 45] },
  }),
  'stud nuts': habit([2, 3, 6], [2, 3, 5], [1, 2, 3]),
  'tapered stud, castle nut': stud,
  'tapered stud, lock nut': stud,
  'thread and lock nut': habit([1, 2, 5], [1, 2, 4], [1, 1, 2], {
    seized: { what: 'the thread is seized', chance: 0.15, minutes: [5, 10, 30] },
  }),
  'wheel nuts': habit([1, 2, 3], [1, 2, 3], [1, 2, 3], {
    cracked: true,
    seized: { what: 'a stud snaps', chance: 0.01, minutes: [15, 30, 60] },
  }),
  clip: snap([0.3, 0.5, 2]),
  plug: snap([0.3, 1, 3]),
  'ball-joint rivets': habit([10, 20, 45], [3, 5, 8], [1, 2, 4]),
  'ball-joint bolts': habit([3, 5, 10], [2, 4, 6], [1, 2, 4]),
  'strut clamp': habit([2, 5, 15], [2, 4, 8], [1, 2, 3], {
    seized: { what: 'the strut is seized in its clamp', chance: 0.15, minutes: [5, 15, 45] },
  }),
  'strut top nut': habit([2, 3, 6], [1, 2, 4], [1, 2, 3]),
  'press fit': snap([5, 10, 25]),
  'hose bracket': snap([0.5, 1, 3]),
  'hydraulic union': habit([1, 2, 6], [1, 2, 4], [0.5, 1, 2], {
    seized: { what: 'the pipe turns with its union', chance: 0.15, minutes: [10, 25, 60] },
  }),
  'air union': habit([1, 2, 4], [1, 2, 3], [0.5, 1, 2]),
  spline: habit([1, 3, 10], [1, 3, 6], null, {
    seized: { what: 'the spline is rusted in', chance: 0.15, minutes: [5, 15, 60] },
  }),
  'axle nut': habit([1, 2, 5], [1, 2, 3], [1, 2, 4], { cracked: true }),
  'adjustable taper-roller hub': habit([3, 5, 8], [2, 4, 6], [3, 5, 10]),
  'retaining ring': snap([1, 3, 8]),
  'U-bolts': habit([5, 10, 25], [4, 8, 12], [3, 5, 8], {
    seized: { what: 'their nuts are rusted on', chance: 0.3, minutes: [5, 20, 60] },
  }),
  'shackle bolt': habit([3, 6, 15], [2, 4, 8], [1, 2, 3], {
    seized: { what: 'the bolt is seized in the sleeve of its bush', chance: 0.25, minutes: [10, 30, 90] },
  }),
  'anchor bolt': habit([2, 4, 8], [2, 4, 8], [1, 2, 3]),
  seat: habit([0.1, 0.2, 0.5], [0.3, 0.5, 2], null),
}
