import type { ActsOn, View } from './adjuster.ts'

/** "seen from the front"; what acts on both wheels is spoken of as if at the left one, and the side is named. */
export function seenFrom(view: View, on: ActsOn): string {
  if (on === 'both' && view === 'outside') return 'seen from the left'
  if (on === 'both' && view === 'inside') return 'seen from the right'
  return view === 'front' || view === 'rear' ? `seen from the ${view}` : `seen from ${view}`
}
