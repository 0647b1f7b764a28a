import { useCallback, useEffect, useState } from 'react'

/** What is open: which job, which of its stages, and on the bolt book which joint of which wheel. */
export interface Address {
  readonly job: string
  readonly stage: string
  readonly wheel: string
  readonly joint: string
}

/** A place on the page itself ("#sheet") names nothing. */
const isPlace = () => /^#[^/]/.test(location.hash)

const read = (): Address => {
  if (isPlace()) return { job: '', stage: '', wheel: '', joint: '' }
  const [job = '', stage = '', wheel = '', joint = ''] = location.hash
    .replace(/^#\/?/, '')
    .split('/')
    .map(decoded)
  return { job, stage, wheel, joint }
}

/** An address typed by hand need not be well formed. */
function decoded(part: string): string {
  try {
    return decodeURIComponent(part)
  } catch {
    return part
  }
}

/** The address of a stage of a job, or of one joint on it. */
export const addressOf = (...parts: readonly string[]): string =>
  `#/${parts.map(encodeURIComponent).join('/')}`

/** What the page's address names, so that a link, a reload or the browser's own back opens the same. */
export function useAddress(): readonly [Address, (...parts: readonly string[]) => void] {
  const [address, setAddress] = useState(read)
  useEffect(() => {
    const look = () => {
      if (!isPlace()) setAddress(read())
    }
    window.addEventListener('hashchange', look)
    return () => window.removeEventListener('hashchange', look)
  }, [])
  const go = useCallback((...parts: readonly string[]) => {
    location.hash = addressOf(...parts)
  }, [])
  return [address, go]
}
