import { useEffect, useRef, useState } from 'react'
import type { CounterAnswer, CounterAsk, CounterSheets } from './counter-messages.ts'
import type { Plain, Units } from './messages.ts'
import { momentOf } from './moment-of.ts'
import type { OpenJob } from './use-job.ts'

/** The arrival or the handover of a job on the page. */
export interface OpenCounter<S> {
  readonly sheet: S | null
  /** Not yet what was asked last. */
  readonly working: boolean
  readonly trouble: Plain | null
}

/** Long enough to take a burst of letters as one question, ms. */
const pause = 60

/** Holds a job's arrival or handover open, worked out in a worker of its own. */
export function useCounter<W extends keyof CounterSheets>(
  which: W,
  job: OpenJob,
  id: string,
  units: Units,
): OpenCounter<CounterSheets[W]> {
  const [answer, setAnswer] = useState<CounterAnswer | null>(null)
  const [good, setGood] = useState<CounterSheets[W] | null>(null)
  const [broken, setBroken] = useState<Plain | null>(null)
  const [turn, setTurn] = useState(0)
  const worker = useRef<Worker | null>(null)
  const asked = useRef(0)

  useEffect(() => {
    const one = new Worker(new URL('../counter.worker.ts', import.meta.url), { type: 'module' })
    one.onmessage = ({ data }: MessageEvent<CounterAnswer>) => {
      if (data.turn !== asked.current) return
      setAnswer(data)
      if (data.sheet) setGood(data.sheet as CounterSheets[W])
    }
    one.onerror = (event) =>
      setBroken({
        sentence: `The part of this page that reads the ${which} has stopped${event.message ? ` (${event.message})` : ''}.`,
        remedy: 'Load the page again; what was typed is kept.',
      })
    worker.current = one
    return () => one.terminate()
  }, [which])

  const { edits, isRead } = job
  const version = job.row?.version ?? ''
  const day = job.row?.day ?? null
  useEffect(() => {
    if (!isRead) return undefined
    const ask: CounterAsk = {
      turn: ++asked.current,
      which,
      units,
      job: id,
      version,
      edits,
      offset: offsetHere(),
      today: momentOf(day).slice(0, 10),
    }
    setTurn(ask.turn)
    // A burst of letters is one question.
    const timer = setTimeout(() => worker.current?.postMessage(ask), edits.length === 0 ? 0 : pause)
    return () => clearTimeout(timer)
  }, [which, id, version, edits, units, isRead, day])

  return { sheet: good, working: answer?.turn !== turn, trouble: broken ?? answer?.trouble ?? null }
}

/** Of this device, now: "+01:00". */
function offsetHere(): string {
  const minutes = -new Date().getTimezoneOffset()
  const two = (n: number) => String(n).padStart(2, '0')
  return `${minutes < 0 ? '-' : '+'}${two(Math.floor(Math.abs(minutes) / 60))}:${two(Math.abs(minutes) % 60)}`
}
