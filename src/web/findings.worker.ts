/// <reference lib="webworker" />
import { findingsAnswer } from './state/findings-answer.ts'
import type { FindingsAsk } from './state/findings-messages.ts'
import { openShelf } from './state/shelf.ts'

const shelf = openShelf()

self.onmessage = async ({ data: ask }: MessageEvent<FindingsAsk>) => {
  self.postMessage(await findingsAnswer(shelf, ask))
}
