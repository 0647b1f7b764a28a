/// <reference lib="webworker" />
import { answer, jobRows } from './state/answer.ts'
import type { Ask, WorkerSays } from './state/messages.ts'

const say = (message: WorkerSays) => self.postMessage(message)

self.onmessage = ({ data: ask }: MessageEvent<Ask>) => {
  const { told, worked } = answer(ask.job, ask.edits)
  say({ kind: 'told', turn: ask.turn, told })
  say({ kind: 'answer', turn: ask.turn, answer: worked() })
}

say({ kind: 'jobs', rows: jobRows() })
