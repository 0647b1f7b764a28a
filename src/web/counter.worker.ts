/// <reference lib="webworker" />
import { counterAnswer } from './state/counter-answer.ts'
import type { CounterAsk } from './state/counter-messages.ts'
import { openShelf } from './state/shelf.ts'

const shelf = openShelf()

self.onmessage = async ({ data: ask }: MessageEvent<CounterAsk>) => {
  self.postMessage(await counterAnswer(shelf, ask))
}
