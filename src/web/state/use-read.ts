import { useState } from 'react'
import { textMark } from './text-mark.ts'

const place = 'axlewright/read'

function marksRead(): readonly string[] {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(place) ?? '[]')
    return Array.isArray(kept) ? kept.filter((mark) => typeof mark === 'string') : []
  } catch {
    return []
  }
}

/**
 * Whether the person has said of all these sentences of a job that they are read. Kept for one sitting only:
 * whoever opens the page next is told again, and so is everybody when a sentence is new.
 */
export function useRead(job: string, sentences: readonly string[]): [boolean, (read: boolean) => void] {
  const [marks, setMarks] = useState(marksRead)
  const own = sentences.map((sentence) => textMark(`${job} ${sentence}`))
  const choose = (read: boolean) => {
    const others = marksRead().filter((mark) => !own.includes(mark))
    const next = read ? [...others, ...own] : others
    setMarks(next)
    try {
      sessionStorage.setItem(place, JSON.stringify(next))
    } catch {
      // A browser that keeps nothing still takes it for as long as the page is open.
    }
  }
  return [own.every((mark) => marks.includes(mark)), choose]
}
