import { type Entry, isSealed } from '../job/index.ts'
import type { ProofHand } from './proof-sheet.ts'

/** What a kind of entry is called when it is counted. */
const counted: Readonly<Record<string, string>> = {
  undone: 'joints undone',
  tightened: 'tightenings',
  pinned: 'pins',
  checked: 'second looks',
  'signed off': 'sign-offs',
}

/** Every hand that the log names, in the order in which they first appear, with how much of what each did. */
export function proofHands(entries: readonly Entry[]): readonly ProofHand[] {
  const hands = new Map<string, Map<string, number>>()
  for (const entry of entries) {
    const named = entry.data['hand']
    const hand = typeof named === 'string' ? named : isSealed(entry) ? entry.person : null
    if (hand === null) continue
    const did = hands.get(hand) ?? new Map<string, number>()
    const what = counted[entry.kind] ?? 'other entries'
    hands.set(hand, did.set(what, (did.get(what) ?? 0) + 1))
  }
  return [...hands].map(([hand, did]) => ({
    hand,
    did: [...did].map(([what, n]) => `${what}: ${n}`).join(', '),
  }))
}
