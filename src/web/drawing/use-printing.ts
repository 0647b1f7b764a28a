import { useSyncExternalStore } from 'react'

// A browser asks for the paper's layout soon after this event; the media query alone comes too late for it.
let asked = false

function listen(changed: () => void): () => void {
  const list = window.matchMedia('print')
  const before = () => {
    asked = true
    changed()
  }
  const after = () => {
    asked = false
    changed()
  }
  list.addEventListener('change', changed)
  window.addEventListener('beforeprint', before)
  window.addEventListener('afterprint', after)
  return () => {
    list.removeEventListener('change', changed)
    window.removeEventListener('beforeprint', before)
    window.removeEventListener('afterprint', after)
  }
}

/** Whether the page is being laid out for paper. */
export function usePrinting(): boolean {
  return useSyncExternalStore(listen, () => asked || window.matchMedia('print').matches)
}
