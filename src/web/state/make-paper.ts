import type { PaperAnswer, PaperAsk } from './paper-messages.ts'

/** Makes a file for people in a worker that ends when it is done: what it needs is loaded when it is asked for. */
export function makePaper(ask: PaperAsk): Promise<PaperAnswer> {
  const worker = new Worker(new URL('../paper.worker.ts', import.meta.url), { type: 'module' })
  return new Promise<PaperAnswer>((resolve) => {
    worker.onmessage = ({ data }: MessageEvent<PaperAnswer>) => resolve(data)
    worker.onerror = (event) =>
      resolve({
        trouble: {
          sentence: `The part of this page that makes papers has stopped${event.message ? ` (${event.message})` : ''}.`,
          remedy: 'Try again; nothing of the job is lost.',
        },
      })
    worker.postMessage(ask)
  }).finally(() => worker.terminate())
}
