import { useCallback, useEffect, useRef, useState } from 'react'
import type { Problem } from '../../../corner/index.ts'
import { askKeeper } from '../../keep/keep-hand.ts'
import type { KeptFile } from '../../keep/keep-messages.ts'
import { type FilePath, fieldOf, withValue } from './in-file.ts'

/** A file that is being typed. */
export interface FileDraft {
  readonly file: unknown
  readonly problems: readonly Problem[]
  /** It is looked through as it stands. */
  readonly isLooked: boolean
  readonly isChanged: boolean
  set(path: FilePath, value: unknown): void
  problemAt(path: FilePath): Problem | null
  /** Forgets what was typed. */
  leave(): void
}

/** How long the hand rests before the whole is looked through, ms. */
const pause = 250

/** Holds a file that is typed: kept as a draft at once, looked through as a whole while it is typed. */
export function useFileDraft(what: KeptFile['what'], place: string, start: unknown): FileDraft {
  const key = `axlewright/1/draft/${what}/${place}`
  const [file, setFile] = useState<unknown>(() => keptDraft(key) ?? start)
  const [looked, setLooked] = useState<{ file: unknown; problems: readonly Problem[] } | null>(null)
  const newest = useRef(file)
  newest.current = file
  useEffect(() => {
    const timer = setTimeout(() => {
      askKeeper('lookAt', { what, file }).then(
        ({ problems }) => {
          if (newest.current === file) setLooked({ file, problems })
        },
        () => undefined,
      )
    }, pause)
    return () => clearTimeout(timer)
  }, [what, file])
  const set = useCallback(
    (path: FilePath, value: unknown) => {
      setFile((old: unknown) => {
        const next = withValue(old, path, value) ?? {}
        localStorage.setItem(key, JSON.stringify(next))
        return next
      })
    },
    [key],
  )
  const problems = looked?.problems ?? []
  return {
    file,
    problems,
    isLooked: looked?.file === file,
    isChanged: file !== start,
    set,
    problemAt: (path) => {
      const field = fieldOf(path)
      return problems.find((one) => one.field === field) ?? null
    },
    leave: () => {
      localStorage.removeItem(key)
      setFile(start)
    },
  }
}

function keptDraft(key: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(key) ?? 'null')
  } catch {
    return null
  }
}
