import { useCallback, useSyncExternalStore } from 'react'

/** Whether a media query holds, now and whenever that changes. */
export function useMatch(query: string): boolean {
  const listen = useCallback(
    (changed: () => void) => {
      const list = window.matchMedia(query)
      list.addEventListener('change', changed)
      return () => list.removeEventListener('change', changed)
    },
    [query],
  )
  return useSyncExternalStore(listen, () => window.matchMedia(query).matches)
}
