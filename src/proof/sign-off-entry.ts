import { type Entry, foldJob, foldVersion, headsOf, inCausalOrder } from '../job/index.ts'
import { Refusal } from '../quantity/index.ts'
import { digestOf } from './digest-of.ts'
import type { ProofRefusal } from './proof-refusal.ts'

/** What is signed besides the log. @source definition */
export interface SignOff {
  /** The files that the work was worked out with, as plain JSON. */
  readonly files: {
    readonly front: unknown
    readonly rear?: unknown
    readonly spec?: unknown
    readonly kit?: unknown
  }
  /** Version of the program. */
  readonly engine: string
  readonly hand: string
  readonly remark?: string
}

/**
 * The entry that signs a log off: its heads, the rules and the program by which it was worked out, the digest of the
 * state it folds to, and the digests of the models used. Seal it at once, after all that it signs.
 *
 * @param entries all sealed
 * @throws {Refusal} `nothing-signed` when an entry is not sealed yet, or there is none
 * @throws {Refusal} `not-json`
 * @source own derivation: docs/methods/record.md
 */
export function signOffEntry(entries: readonly Entry[], { files, engine, hand, remark }: SignOff): Entry {
  const ordered = inCausalOrder(entries)
  const heads = headsOf(ordered)
  if (heads.length === 0 || ordered.some((entry) => !('id' in entry)))
    throw new Refusal<ProofRefusal>({
      code: 'nothing-signed',
      at: 'entries',
      given: `${ordered.length} entries`,
      sentence: 'There is nothing to sign yet: every entry must be sealed first.',
      remedy: 'Seal the log, then sign it off.',
    })
  const { front, rear, spec, kit } = files
  return {
    kind: 'signed off',
    data: {
      heads,
      fold: foldVersion,
      engine,
      state: digestOf('state', foldJob(ordered)),
      corners: {
        front: digestOf('corner', front),
        ...(rear === undefined ? {} : { rear: digestOf('corner', rear) }),
      },
      ...(spec === undefined ? {} : { spec: digestOf('spec', spec) }),
      ...(kit === undefined ? {} : { kit: digestOf('kit', kit) }),
      ...(remark === undefined ? {} : { remark }),
      hand,
    },
  }
}
