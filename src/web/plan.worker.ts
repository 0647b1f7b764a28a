/// <reference lib="webworker" />
import { demoFiles } from './state/demo-files.ts'
import { library } from './state/library.ts'
import { planAnswer } from './state/plan-answer.ts'
import type { PlanAnswer, PlanAsk } from './state/plan-messages.ts'

const jobs = demoFiles().then(library)

self.onmessage = async ({ data: ask }: MessageEvent<PlanAsk>) => {
  const answer: PlanAnswer = await jobs.then(
    (all) => planAnswer(all, ask),
    (error: Error) => ({
      turn: ask.turn,
      sheet: null,
      trouble: { sentence: error.message, remedy: 'Load the page again; what was typed is kept.' },
    }),
  )
  self.postMessage(answer)
}
