import { inCausalOrder, isSealed, type SealedEntry } from '../../job/index.ts'
import { verdictOf, verifyProof } from '../../proof/index.ts'
import type { OwnWorkshop } from '../../store/index.ts'
import type { Outcome } from '../files/outcome.ts'
import { carried, proofBytes } from '../record/carried.ts'
import { ownWorkshop } from '../record/own-workshop.ts'
import type { Verified } from '../record/verified.ts'
import { verdictText } from '../text/verdict-text.ts'

/** What `verify` can be told. */
export interface VerifyOptions {
  readonly root?: string
  readonly json?: boolean
}

/** `axlewright verify FILE`: is it intact, whose hands, what is covered. 0 only when all of that is well. */
export async function verifyCommand(path: string, options: VerifyOptions): Promise<Outcome> {
  const own = options.root === undefined ? await ownWorkshop() : null
  const trusted = options.root ?? own?.root
  const by = options.root !== undefined ? 'named' : own ? 'own workshop' : 'nobody'
  const found = { path, by, ...(await looked(path, trusted, own ?? (await ownWorkshop()))) } as const
  return {
    out: options.json ? `${JSON.stringify(found, null, 2)}\n` : verdictText(found),
    code: isWell(found) ? 0 : 1,
  }
}

async function looked(
  path: string,
  trusted: string | undefined,
  own: OwnWorkshop | null,
): Promise<Pick<Verified, 'verdict' | 'bare' | 'told'>> {
  const trust = trusted === undefined ? {} : { trusted }
  const bytes = proofBytes(path)
  if (bytes) return { verdict: await verifyProof(bytes, trust), bare: 0, told: [] }
  const { whose, entries, snapshots, values, spoilt, told } = await carried(path)
  const sealed = inCausalOrder(entries).filter(isSealed) as readonly SealedEntry[]
  const workshop = own?.name === whose.workshop ? own : null
  const verdict = await verdictOf(
    {
      head: { format: 1, kind: 'proof', ...whose, root: workshop?.root ?? null },
      entries: sealed,
      snapshots,
      private: values,
      workshop: workshop?.log ?? [],
    },
    trust,
  )
  const lines = spoilt.map(({ line, sentence }) => ({ where: `line ${line}`, entry: null, sentence }))
  return {
    verdict: {
      ...verdict,
      intact: verdict.intact && lines.length === 0,
      broken: [...lines, ...verdict.broken],
    },
    bare: entries.length - sealed.length,
    told,
  }
}

function isWell({ verdict, bare }: Verified): boolean {
  const last = verdict.signOffs.at(-1)
  return (
    verdict.intact &&
    bare === 0 &&
    verdict.backDated.length === 0 &&
    verdict.signers.every(({ hand }) => hand === 'known') &&
    last !== undefined &&
    last.late.length === 0 &&
    last.state === 'comes out again' &&
    last.filesAmiss.length === 0
  )
}
