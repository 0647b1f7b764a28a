import type { JointNode } from './assembly.ts'
import type { Failure, Rung } from './failure.ts'
import { jointHabits } from './joint-habits.ts'

const nutted: readonly JointNode['kind'][] = [
  'tapered stud, castle nut',
  'tapered stud, lock nut',
  'stud nuts',
  'wheel nuts',
  'axle nut',
  'U-bolts',
  'strut top nut',
  'thread and lock nut',
  'shackle bolt',
]

/**
 * Every way there is for a failure at a joint of its kind, from gentle to rough; none where it opens as usual.
 *
 * @source common practice, no source
 */
export function allRungs({ what }: Failure, { kind }: JointNode): readonly Rung[] {
  const { taper } = jointHabits[kind]
  const nut: readonly Rung[] = nutted.includes(kind) ? ['split'] : []
  switch (what) {
    case 'seized sleeve':
      return kind === 'thread and lock nut'
        ? ['soak', 'heat', 'cut']
        : ['soak', 'impact', 'puller', 'heat', 'cut']
    case 'snapped stud':
      if (taper) return ['strap']
      return nutted.includes(kind) && kind !== 'shackle bolt' ? [] : ['extractor', 'drill']
    case 'stripped thread':
      return ['lever', ...nut, 'cut']
    case 'rounded head':
      return ['grip', ...nut, 'cut']
    case 'taper will not part':
      return ['press', 'hammer', 'fork', 'heat', 'cut']
    case 'stud spins':
      return ['clamp', ...nut, 'cut']
    default:
      return []
  }
}
