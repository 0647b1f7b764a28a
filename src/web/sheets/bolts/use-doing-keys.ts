import { useEffect, useRef } from 'react'

/** Keys of a keyboard or a foot pedal: Enter or → says done, ← or Backspace goes back. A key that is held counts once. */
export function useDoingKeys({ done, back }: { readonly done: () => void; readonly back: () => void }): void {
  const latest = useRef({ done, back })
  latest.current = { done, back }
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.repeat || event.ctrlKey || event.altKey || event.metaKey) return
      const there = event.target instanceof Element ? event.target : null
      if (there?.closest('input, textarea, select')) return
      const forward = event.key === 'ArrowRight' || event.key === 'Enter'
      if (!forward && event.key !== 'ArrowLeft' && event.key !== 'Backspace') return
      // Enter on a button is that button's.
      if (event.key === 'Enter' && there?.closest('button, a, summary')) return
      event.preventDefault()
      if (forward) latest.current.done()
      else latest.current.back()
    }
    window.addEventListener('keydown', press)
    return () => window.removeEventListener('keydown', press)
  }, [])
}
