/// <reference lib="webworker" />
import { planAnswer } from './state/plan-answer.ts'
import type { PlanAsk } from './state/plan-messages.ts'
import { openShelf } from './state/shelf.ts'

const shelf = openShelf()

self.onmessage = async ({ data: ask }: MessageEvent<PlanAsk>) => {
  self.postMessage(await planAnswer(shelf, ask))
}
