/// <reference lib="webworker" />
import { answer } from './state/answer.ts'
import { demoRow } from './state/job-row.ts'
import type { Ask, WorkerSays } from './state/messages.ts'
import { openShelf } from './state/shelf.ts'

const say = (message: WorkerSays) => self.postMessage(message)

const shelf = openShelf()

self.onmessage = async ({ data: ask }: MessageEvent<Ask>) => {
  const { turn } = ask
  const { told, sheet, bolts } = await answer(shelf, ask)
  say({ kind: 'told', turn, told })
  if (ask.bolts) say({ kind: 'bolts', turn, answer: await bolts() })
  say({ kind: 'answer', turn, answer: ask.sheet ? sheet() : null })
}

shelf.demo.then(
  (all) => say({ kind: 'jobs', rows: all.map(demoRow) }),
  (error: Error) => say({ kind: 'broken', reason: error.message }),
)
