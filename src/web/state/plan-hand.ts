import type { PlanAnswer, PlanAsk } from './plan-messages.ts'

/** What the page holds of the worker that plans. */
export interface PlanHand {
  ask(question: Omit<PlanAsk, 'turn'>): void
  end(): void
}

/** Past this a question under way is a search, ms: a newer one does not wait for it. */
const patience = 250

/**
 * One worker that plans. A newer question waits for a short one to end; a long search is broken off instead, with its
 * worker, and a new worker takes over.
 */
export function planHand(on: {
  readonly answer: (answer: PlanAnswer) => void
  readonly broken: (reason: string) => void
}): PlanHand {
  let turn = 0
  let worker = begin()
  let underWay: number | null = null
  let waiting: PlanAsk | null = null
  let timer: ReturnType<typeof setTimeout> | undefined

  function begin(): Worker {
    const one = new Worker(new URL('../plan.worker.ts', import.meta.url), { type: 'module' })
    one.onmessage = ({ data }: MessageEvent<PlanAnswer>) => {
      clearTimeout(timer)
      underWay = null
      if (waiting) send(waiting)
      else if (data.turn === turn) on.answer(data)
    }
    one.onerror = (event) => on.broken(event.message)
    return one
  }
  function send(ask: PlanAsk) {
    waiting = null
    underWay = ask.turn
    worker.postMessage(ask)
  }
  function breakOff() {
    if (!waiting) return
    worker.terminate()
    worker = begin()
    send(waiting)
  }
  return {
    ask(question) {
      const ask = { turn: ++turn, ...question }
      if (underWay === null) return send(ask)
      waiting = ask
      clearTimeout(timer)
      timer = setTimeout(breakOff, patience)
    },
    end() {
      clearTimeout(timer)
      worker.terminate()
    },
  }
}
