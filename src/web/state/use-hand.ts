import { useCallback, useState } from 'react'

const place = 'axlewright/hands'
const most = 4

/** Hands known on this device; the first is whoever works now. */
function keptHands(): readonly string[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place) ?? '[]')
    return Array.isArray(kept) ? kept.filter((hand) => typeof hand === 'string' && hand.trim() !== '') : []
  } catch {
    return []
  }
}

/** Whoever works at this device now; null until somebody said it. */
export const firstHand = (): string | null => keptHands()[0] ?? null

/** Who works at this device: initials or a sign, asked once and kept, with those who were here before. */
export interface Hands {
  /** Null until somebody said it. */
  readonly now: string | null
  readonly known: readonly string[]
  /** Whoever works from now on. */
  readonly take: (hand: string) => void
  /** Somebody who only looked: known from now on, and the work stays with whoever works. */
  readonly meet: (hand: string) => void
}

/** The hands at this device. */
export function useHand(): Hands {
  const [hands, setHands] = useState(keptHands)
  const keep = useCallback((next: readonly string[]) => {
    setHands(next)
    try {
      localStorage.setItem(place, JSON.stringify(next))
    } catch {
      // A browser that keeps nothing asks again next time.
    }
  }, [])
  return {
    now: hands[0] ?? null,
    known: hands,
    take: (hand) => keep([hand, ...hands.filter((other) => other !== hand)].slice(0, most)),
    meet: (hand) => keep(hands.includes(hand) ? hands : [...hands, hand].slice(0, most)),
  }
}
