/// <reference lib="webworker" />
import { carriedParts, verifyProof } from '../proof/index.ts'
import { browserStore, ownWorkshop } from '../store/browser/index.ts'
import { plainOf } from './state/plain-of.ts'
import type { VerifyAsk, VerifySays } from './state/verify-messages.ts'

const say = (message: VerifySays) => self.postMessage(message)

self.onmessage = async ({ data: { bytes, root } }: MessageEvent<VerifyAsk>) => {
  try {
    const own = root === '' ? ((await ownWorkshop(browserStore()))?.root ?? null) : null
    const trusted = root || own
    const verdict = await verifyProof(carriedParts(bytes).proof, {
      ...(trusted ? { trusted } : {}),
      progress: (done, of) => say({ kind: 'progress', done, of }),
    })
    say({ kind: 'verdict', verdict, by: root ? 'named' : own ? 'own workshop' : 'nobody' })
  } catch (error) {
    say({ kind: 'trouble', trouble: plainOf(error) })
  }
}
