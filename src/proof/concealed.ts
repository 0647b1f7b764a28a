import {
  commitmentIn,
  type Entry,
  inCausalOrder,
  isSealed,
  type PrivateValue,
  tokenOf,
  withPersonal,
} from '../job/index.ts'
import { canonicalText } from './canonical-text.ts'
import { hashOf } from './hash-of.ts'
import { toHex } from './hex.ts'
import { privateBytes } from './private-bytes.ts'

/** A log that can be sealed, and what was taken out of it. @source definition */
export interface Concealed {
  readonly entries: readonly Entry[]
  /** To be kept beside the log before it is sealed. */
  readonly values: readonly PrivateValue[]
}

/**
 * A log with a token in place of each personal value of its bare entries. Sealed ones stay as they are: what stands in
 * them in clear is sealed in clear.
 *
 * @param salt gives 32 bytes, random and other ones each time
 * @throws {Refusal} `not-json` when a value holds half a character
 * @source own derivation: docs/methods/record.md
 */
export function concealed(log: readonly Entry[], salt: () => Uint8Array): Concealed {
  const values: PrivateValue[] = []
  const ordered = inCausalOrder(log)
  const entries = withPersonal(ordered, (text, { entry }) => {
    if (isSealed(ordered[entry]!) || commitmentIn(text) !== null) return text
    canonicalText(text)
    const pair = { salt: toHex(salt()), value: text }
    const commitment = hashOf(privateBytes(pair)!)
    values.push({ commitment, ...pair })
    return tokenOf(commitment)
  })
  return { entries, values }
}
