import { canonicalText } from './canonical-text.ts'
import { hashOf } from './hash-of.ts'

/**
 * The digest of something that a log pins: a file beside it, or the state it folds to.
 *
 * @param what keeps digests of different things apart
 * @param json plain value
 * @throws {Refusal} `not-json`
 * @source own derivation: docs/methods/record.md
 */
export const digestOf = (what: 'state' | 'corner' | 'spec' | 'kit', json: unknown): string =>
  hashOf(`axlewright/${what}/1\0${canonicalText(json)}`)
