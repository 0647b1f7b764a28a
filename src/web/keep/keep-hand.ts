import type { Plain } from '../state/messages.ts'
import type { KeepAnswer, KeepAsk, KeepAsks } from './keep-messages.ts'

/** Why something was not kept, as it is thrown on the page. */
class NotKept extends Error implements Plain {
  readonly sentence: string
  readonly remedy: string
  constructor({ sentence, remedy }: Plain) {
    super(`${sentence} ${remedy}`)
    this.sentence = sentence
    this.remedy = remedy
  }
}

interface Waiting {
  readonly taken: (back: never) => void
  readonly refused: (why: NotKept) => void
}

let worker: Worker | null = null
let turn = 0
const waiting = new Map<number, Waiting>()

/** Asks the part that keeps jobs; it is started with the first question, once for the whole page. */
export function askKeeper<K extends keyof KeepAsks>(
  kind: K,
  give: KeepAsks[K]['give'],
): Promise<KeepAsks[K]['back']> {
  worker ??= begun()
  const ask = { turn: ++turn, kind, give } as KeepAsk
  return new Promise((taken, refused) => {
    waiting.set(ask.turn, { taken, refused })
    worker?.postMessage(ask)
  })
}

function begun(): Worker {
  const one = new Worker(new URL('../keep.worker.ts', import.meta.url), { type: 'module' })
  one.onmessage = ({ data }: MessageEvent<KeepAnswer>) => {
    const asked = waiting.get(data.turn)
    waiting.delete(data.turn)
    if ('back' in data) asked?.taken(data.back as never)
    else asked?.refused(new NotKept(data.trouble))
  }
  one.onerror = (event) => {
    const why = new NotKept({
      sentence: `The part of this page that keeps jobs has stopped${event.message ? ` (${event.message})` : ''}.`,
      remedy: 'Load the page again; what was sealed before is kept, and what was typed stays a draft.',
    })
    for (const { refused } of waiting.values()) refused(why)
    waiting.clear()
    worker = null
  }
  return one
}
