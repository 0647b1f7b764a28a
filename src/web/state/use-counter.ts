import { useEffect, useRef, useState } from 'react'
import type { ArrivalSheet } from '../../sheet/index.ts'
import type { CounterAnswer, CounterAsk } from './counter-messages.ts'
import type { Plain } from './messages.ts'
import { momentOf } from './moment-of.ts'
import type { OpenJob } from './use-job.ts'

/** The arrival of a job on the page. */
export interface OpenCounter {
  readonly sheet: ArrivalSheet | null
  /** Not yet what was asked last. */
  readonly working: boolean
  readonly trouble: Plain | null
}

/** Holds a job's arrival open, worked out in a worker of its own. */
export function useCounter(job: OpenJob, id: string): OpenCounter {
  const [answer, setAnswer] = useState<CounterAnswer | null>(null)
  const [good, setGood] = useState<ArrivalSheet | null>(null)
  const [broken, setBroken] = useState<Plain | null>(null)
  const [turn, setTurn] = useState(0)
  const worker = useRef<Worker | null>(null)
  const asked = useRef(0)

  useEffect(() => {
    const one = new Worker(new URL('../counter.worker.ts', import.meta.url), { type: 'module' })
    one.onmessage = ({ data }: MessageEvent<CounterAnswer>) => {
      if (data.turn !== asked.current) return
      setAnswer(data)
      if (data.sheet) setGood(data.sheet)
    }
    one.onerror = (event) =>
      setBroken({
        sentence: `The part of this page that reads the arrival has stopped${event.message ? ` (${event.message})` : ''}.`,
        remedy: 'Load the page again; what was typed is kept.',
      })
    worker.current = one
    return () => one.terminate()
  }, [])

  const { edits, isRead } = job
  const version = job.row?.version ?? ''
  const day = job.row?.day ?? null
  useEffect(() => {
    if (!isRead) return
    const ask: CounterAsk = {
      turn: ++asked.current,
      job: id,
      version,
      edits,
      offset: offsetHere(),
      today: momentOf(day).slice(0, 10),
    }
    setTurn(ask.turn)
    worker.current?.postMessage(ask)
  }, [id, version, edits, isRead, day])

  return { sheet: good, working: answer?.turn !== turn, trouble: broken ?? answer?.trouble ?? null }
}

/** Of this device, now: "+01:00". */
function offsetHere(): string {
  const minutes = -new Date().getTimezoneOffset()
  const two = (n: number) => String(n).padStart(2, '0')
  return `${minutes < 0 ? '-' : '+'}${two(Math.floor(Math.abs(minutes) / 60))}:${two(Math.abs(minutes) % 60)}`
}
