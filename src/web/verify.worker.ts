/// <reference lib="webworker" />
import { readCarriedJob, verifyProof } from '../proof/index.ts'
import { browserStore, ownWorkshop } from '../store/browser/index.ts'
import { plainOf } from './state/plain-of.ts'
import type { VerifyAsk, VerifySays } from './state/verify-messages.ts'

const say = (message: VerifySays) => self.postMessage(message)

/** As every ZIP begins (APPNOTE.TXT, 4.3.7). */
const isZip = (bytes: Uint8Array) => bytes[0] === 0x50 && bytes[1] === 0x4b

self.onmessage = async ({ data: { bytes, root } }: MessageEvent<VerifyAsk>) => {
  try {
    const own = root === '' ? ((await ownWorkshop(browserStore()))?.root ?? null) : null
    const trusted = root || own
    const proof = isZip(bytes) ? readCarriedJob(bytes).proof : bytes
    const verdict = await verifyProof(proof, {
      ...(trusted ? { trusted } : {}),
      progress: (done, of) => say({ kind: 'progress', done, of }),
    })
    say({ kind: 'verdict', verdict, by: root ? 'named' : own ? 'own workshop' : 'nobody' })
  } catch (error) {
    say({ kind: 'trouble', trouble: plainOf(error) })
  }
}
