import { useEffect, useState } from 'react'
import { askPersistence, type Persistence } from '../../../store/browser/index.ts'

const words: Readonly<Record<Persistence, string>> = {
  granted: 'The browser has promised to keep it until you delete it.',
  'not granted':
    'The browser may clear it when the device runs out of room: export what matters, and take the file in again anywhere.',
  'cannot be told': 'Whether the browser keeps it for good cannot be told here: export what matters.',
}

/** Plain words for what is kept and what that is worth. */
export function KeptWords() {
  const [said, setSaid] = useState<Persistence | null>(null)
  useEffect(() => {
    askPersistence().then(setSaid)
  }, [])
  return (
    <p className="beside-note">
      All of this is kept in this browser and nowhere else. {said ? words[said] : ''}
    </p>
  )
}
