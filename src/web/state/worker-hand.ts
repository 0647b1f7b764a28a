import type { Answer, Ask, BoltAnswer, JobRow, Told, WorkerSays } from './messages.ts'

/** A question without its turn. */
export type Question = Omit<Ask, 'turn'>

/** What the page holds of the worker. */
export interface WorkerHand {
  ask(question: Question): void
  end(): void
}

/**
 * One worker, one question under way at most: while it works, only the newest question waits, and an answer
 * that a newer question has overtaken is dropped.
 */
export function workerHand(on: {
  readonly jobs: (rows: readonly JobRow[]) => void
  readonly told: (asked: Question, told: Told) => void
  readonly bolts: (asked: Question, answer: BoltAnswer) => void
  readonly answer: (asked: Question, answer: Answer | null) => void
  readonly broken: (reason: string) => void
}): WorkerHand {
  const worker = new Worker(new URL('../sheet.worker.ts', import.meta.url), { type: 'module' })
  let turn = 0
  let underWay: Ask | null = null
  let waiting: Ask | null = null
  const send = (ask: Ask) => {
    underWay = ask
    worker.postMessage(ask)
  }
  worker.onmessage = ({ data }: MessageEvent<WorkerSays>) => {
    if (data.kind === 'jobs') return on.jobs(data.rows)
    if (data.kind === 'broken') return on.broken(data.reason)
    const current = !waiting && underWay?.turn === data.turn ? underWay : null
    if (data.kind === 'told') {
      if (current) on.told(current, data.told)
      return
    }
    if (data.kind === 'bolts') {
      if (current) on.bolts(current, data.answer)
      return
    }
    const asked = underWay
    underWay = null
    if (waiting) {
      const next = waiting
      waiting = null
      send(next)
    } else if (asked?.turn === data.turn) on.answer(asked, data.answer)
  }
  worker.onerror = (event) => on.broken(event.message)
  return {
    ask(question) {
      turn++
      const ask = { turn, ...question }
      if (underWay) waiting = ask
      else send(ask)
    },
    end: () => worker.terminate(),
  }
}
