import { useCallback, useState } from 'react'
import type { Units } from './messages.ts'

const place = 'axlewright/units'

const kept = (): Units => {
  try {
    return localStorage.getItem(place) === 'US' ? 'US' : 'metric'
  } catch {
    return 'metric'
  }
}

/** The units in which the person at this device reads. */
export function useUnits(): readonly [Units, (units: Units) => void] {
  const [units, setUnits] = useState(kept)
  const choose = useCallback((next: Units) => {
    setUnits(next)
    try {
      localStorage.setItem(place, next)
    } catch {
      // A browser that keeps nothing still reads in them until it is closed.
    }
  }, [])
  return [units, choose]
}
