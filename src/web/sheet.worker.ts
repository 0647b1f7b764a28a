/// <reference lib="webworker" />
import { answer, jobRows } from './state/answer.ts'
import { demoFiles } from './state/demo-files.ts'
import { library } from './state/library.ts'
import type { Ask, WorkerSays } from './state/messages.ts'

const say = (message: WorkerSays) => self.postMessage(message)

const jobs = demoFiles().then(library)

self.onmessage = async ({ data: ask }: MessageEvent<Ask>) => {
  const { turn } = ask
  const { told, sheet, bolts } = await answer(await jobs, ask)
  say({ kind: 'told', turn, told })
  if (ask.bolts) say({ kind: 'bolts', turn, answer: await bolts() })
  say({ kind: 'answer', turn, answer: ask.sheet ? sheet() : null })
}

jobs.then(
  (all) => say({ kind: 'jobs', rows: jobRows(all) }),
  (error: Error) => say({ kind: 'broken', reason: error.message }),
)
