import type { Answer, Ask, Edit, JobRow, Told, WorkerSays } from './messages.ts'

/** What the page holds of the worker. */
export interface WorkerHand {
  ask(job: string, edits: readonly Edit[]): void
  end(): void
}

/**
 * One worker, one question under way at most: while it works, only the newest question waits, and an answer
 * that a newer question has overtaken is dropped.
 */
export function workerHand(on: {
  readonly jobs: (rows: readonly JobRow[]) => void
  readonly told: (job: string, told: Told) => void
  readonly answer: (job: string, answer: Answer) => void
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
    if (data.kind === 'told') {
      if (!waiting && underWay?.turn === data.turn) on.told(underWay.job, data.told)
      return
    }
    const asked = underWay
    underWay = null
    if (waiting) {
      const next = waiting
      waiting = null
      send(next)
    } else if (asked?.turn === data.turn) on.answer(asked.job, data.answer)
  }
  worker.onerror = (event) => on.broken(event.message)
  return {
    ask(job, edits) {
      turn++
      const ask = { turn, job, edits }
      if (underWay) waiting = ask
      else send(ask)
    },
    end: () => worker.terminate(),
  }
}
