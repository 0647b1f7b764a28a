import { useRef } from 'react'

/** A glove or a pedal that bounces: so soon after a touch, milliseconds, a second one is not a second fact. */
const bounce = 600

/** Runs what is touched, but not what a bounce of the same touch hits. */
export function useOneTouch(): (work: () => void) => void {
  const last = useRef(Number.NEGATIVE_INFINITY)
  return (work) => {
    const now = performance.now()
    if (now - last.current < bounce) return
    last.current = now
    work()
  }
}
