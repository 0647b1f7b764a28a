/// <reference lib="webworker" />
import { demoFiles } from './state/demo-files.ts'
import { findingsAnswer } from './state/findings-answer.ts'
import type { FindingsAnswer, FindingsAsk } from './state/findings-messages.ts'
import { library } from './state/library.ts'

const jobs = demoFiles().then(library)

self.onmessage = async ({ data: ask }: MessageEvent<FindingsAsk>) => {
  const answer: FindingsAnswer = await jobs.then(
    (all) => findingsAnswer(all, ask),
    (error: Error) => ({
      turn: ask.turn,
      sheet: null,
      took: 0,
      trouble: { sentence: error.message, remedy: 'Load the page again; what was typed is kept.' },
    }),
  )
  self.postMessage(answer)
}
