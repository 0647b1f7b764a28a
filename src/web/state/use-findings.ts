import { useEffect, useRef, useState } from 'react'
import type { FindingsSheet } from '../../sheet/index.ts'
import type { FindingsAnswer, FindingsAsk } from './findings-messages.ts'
import type { Plain, Units } from './messages.ts'
import type { OpenJob } from './use-job.ts'

/** The findings of a job on the page. */
export interface OpenFindings {
  readonly sheet: FindingsSheet | null
  /** Not yet what was asked last. */
  readonly working: boolean
  /** How long the ranking took, ms. */
  readonly took: number
  readonly trouble: Plain | null
  choose(round: number): void
}

/** Holds a job's findings open, worked out in a worker of their own. */
export function useFindings(job: OpenJob, id: string, units: Units): OpenFindings {
  const [round, setRound] = useState<number | null>(null)
  const [answer, setAnswer] = useState<FindingsAnswer | null>(null)
  const [good, setGood] = useState<FindingsSheet | null>(null)
  const [broken, setBroken] = useState<Plain | null>(null)
  const [turn, setTurn] = useState(0)
  const worker = useRef<Worker | null>(null)
  const asked = useRef(0)

  useEffect(() => {
    const one = new Worker(new URL('../findings.worker.ts', import.meta.url), { type: 'module' })
    one.onmessage = ({ data }: MessageEvent<FindingsAnswer>) => {
      if (data.turn !== asked.current) return
      setAnswer(data)
      if (data.sheet) setGood(data.sheet)
    }
    one.onerror = (event) =>
      setBroken({
        sentence: `The part of this page that weighs the findings has stopped${event.message ? ` (${event.message})` : ''}.`,
        remedy: 'Load the page again; what was typed is kept.',
      })
    worker.current = one
    return () => one.terminate()
  }, [])

  const { edits } = job
  const version = job.row?.version ?? ''
  useEffect(() => {
    const ask: FindingsAsk = { turn: ++asked.current, job: id, version, edits, units, round }
    setTurn(ask.turn)
    worker.current?.postMessage(ask)
  }, [id, version, edits, units, round])

  return {
    sheet: good,
    working: answer?.turn !== turn,
    took: answer?.took ?? 0,
    trouble: broken ?? answer?.trouble ?? null,
    choose: setRound,
  }
}
