import { useEffect } from 'react'

/** Keeps the screen awake while a component stands, where the browser can. */
export function useAwake(): void {
  useEffect(() => {
    let lock: WakeLockSentinel | null = null
    let over = false
    const take = async () => {
      if (document.visibilityState !== 'visible') return
      try {
        const got = await navigator.wakeLock?.request('screen')
        if (over) await got?.release()
        else lock = got ?? null
      } catch {
        // Refused, on a low battery for one: the work goes on all the same.
      }
    }
    void take()
    // A page that was hidden has lost it.
    document.addEventListener('visibilitychange', take)
    return () => {
      over = true
      document.removeEventListener('visibilitychange', take)
      void lock?.release()
    }
  }, [])
}
