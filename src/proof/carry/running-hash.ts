import { sha256 } from '@noble/hashes/sha2.js'
import { toHex } from '../hex.ts'

/** SHA-256 of bytes that come part by part. @source FIPS 180-4 */
export interface RunningHash {
  readonly add: (bytes: Uint8Array) => void
  /** Of all that came; asked once. */
  readonly digest: () => string
}

/**
 * A SHA-256 that runs.
 *
 * @source FIPS 180-4
 */
export function runningHash(): RunningHash {
  const state = sha256.create()
  return { add: (bytes) => void state.update(bytes), digest: () => toHex(state.digest()) }
}
