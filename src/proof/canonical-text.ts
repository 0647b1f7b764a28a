import canonicalize from 'canonicalize'
import { Refusal } from '../quantity/index.ts'
import type { ProofRefusal } from './proof-refusal.ts'

/**
 * The one spelling of a JSON value: members sorted, no spaces, numbers as ECMAScript writes them.
 *
 * @param value plain JSON; members that are undefined do not count
 * @throws {Refusal} `not-json` for a number that is not finite, a half surrogate, or what is no JSON at all
 * @source RFC 8785 (JCS)
 * @example canonicalText({ b: 1, a: [true, null] }) // '{"a":[true,null],"b":1}'
 */
export function canonicalText(value: unknown): string {
  let text: string | undefined
  try {
    text = canonicalize(value)
  } catch {
    text = undefined
  }
  if (text === undefined)
    throw new Refusal<ProofRefusal>({
      code: 'not-json',
      at: 'value',
      given: typeof value,
      sentence: 'This value has no JSON form: it holds a number that is not finite, or half a character.',
      remedy: 'Type the text again, or leave the number out.',
    })
  return text
}
