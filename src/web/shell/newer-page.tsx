import { registerSW } from 'virtual:pwa-register'
import { useEffect, useState } from 'react'
import './newer-page.css'

/**
 * Makes the page work without a network after the first visit, and says so when a newer one is there. It is taken when
 * the person says so: what was typed is kept either way.
 */
export function NewerPage() {
  const [take, setTake] = useState<(() => void) | null>(null)
  useEffect(() => {
    const update = registerSW({
      onNeedRefresh: () => setTake(() => () => void update(true)),
    })
  }, [])
  if (!take) return null
  return (
    <div className="newer" role="status">
      <p>A newer version of this page is here. What you typed and sealed stays.</p>
      <button type="button" onClick={take}>
        Take it
      </button>
      <button type="button" className="bare" onClick={() => setTake(null)}>
        Later
      </button>
    </div>
  )
}
