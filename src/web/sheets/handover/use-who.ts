import { useState } from 'react'
import { useHand } from '../../state/use-hand.ts'

/** Who hands the vehicle over: known on this device, or typed here. */
export interface Who {
  /** Empty until somebody said it. */
  readonly hand: string
  readonly set: (text: string) => void
  /** The hand, which works from now on. */
  readonly take: () => string
}

/** Whoever is at the counter now. */
export function useWho(): Who {
  const hands = useHand()
  const [typed, setTyped] = useState<string | null>(null)
  const hand = (typed ?? hands.now ?? '').trim()
  return {
    hand,
    set: setTyped,
    take: () => {
      if (hand !== '' && hand !== hands.now) hands.take(hand)
      return hand
    },
  }
}
