import { useCallback, useEffect, useState } from 'react'

const read = () => decodeURIComponent(location.hash.replace(/^#\/?/, '').split('/')[0] ?? '')

/** The job named in the page's address, so that a link or a reload opens the same one. */
export function useAddress(): [string, (job: string) => void] {
  const [job, setJob] = useState(read)
  useEffect(() => {
    const look = () => setJob(read())
    window.addEventListener('hashchange', look)
    return () => window.removeEventListener('hashchange', look)
  }, [])
  const go = useCallback((next: string) => {
    location.hash = `/${encodeURIComponent(next)}`
  }, [])
  return [job, go]
}
