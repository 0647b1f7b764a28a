/// <reference lib="webworker" />
import { paperAnswer } from './state/paper-answer.ts'
import type { PaperAsk } from './state/paper-messages.ts'
import { openShelf } from './state/shelf.ts'

self.onmessage = async ({ data: ask }: MessageEvent<PaperAsk>) => {
  self.postMessage(await paperAnswer(openShelf(), ask))
}
