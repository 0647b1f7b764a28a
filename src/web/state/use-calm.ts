import { useEffect, useState } from 'react'

/** Whether a value has stayed the same for some milliseconds: no word about a text that is still being typed. */
export function useCalm(value: unknown, milliseconds: number): boolean {
  const [last, setLast] = useState(value)
  useEffect(() => {
    const timer = setTimeout(() => setLast(value), milliseconds)
    return () => clearTimeout(timer)
  }, [value, milliseconds])
  return last === value
}
