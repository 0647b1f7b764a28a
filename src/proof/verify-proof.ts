import { coverageOf, type SealedEntry, stateByRules } from '../job/index.ts'
import { backDated } from './back-dated.ts'
import { digestOf } from './digest-of.ts'
import { fingerprint } from './fingerprint.ts'
import { personalVerdict } from './personal-verdict.ts'
import type { Proof } from './proof.ts'
import type { ProofList } from './proof-reading.ts'
import { signedShape } from './proof-shape-schema.ts'
import type { ProofVerdict, SignerVerdict, SignOffVerdict } from './proof-verdict.ts'
import { readProof } from './read-proof.ts'
import { type Progress, verifyEntries } from './verify-entries.ts'
import { type WorkshopState, workshopState } from './workshop-state.ts'

/** How a proof is looked at. @source definition */
export interface VerifyOptions {
  /** Public key of the root that is trusted, or its fingerprint as on paper; without it no hand is known. */
  readonly trusted?: string
  readonly progress?: Progress
}

/**
 * Looks a proof through: is it intact or which entry is the first that is not, whose hands signed it, what the sign-off
 * covers, and whether what was signed comes out again.
 *
 * @param bytes of the file
 * @source own derivation: docs/methods/record.md
 */
export async function verifyProof(bytes: Uint8Array, options: VerifyOptions = {}): Promise<ProofVerdict> {
  const { proof, spoilt } = readProof(bytes)
  if (proof) return verdictOf(proof, options)
  return {
    ...nothing,
    broken: spoilt.map(({ list, at, sentence }) => ({
      where: whereOf(list, at),
      entry: list === 'entries' ? at : null,
      sentence,
    })),
  }
}

/**
 * The same of a proof that has no file of its own: a log as a store keeps it.
 *
 * @param proof its entries in causal order
 * @source own derivation: docs/methods/record.md
 */
export async function verdictOf(
  proof: Proof,
  { trusted, progress }: VerifyOptions = {},
): Promise<ProofVerdict> {
  const { head, entries, workshop } = proof
  const whose = { workshop: head.workshop, job: head.job }
  const inLog = await verifyEntries(entries, whose, progress)
  const inWorkshop = await verifyEntries(workshop, { workshop: head.workshop, job: 'workshop' })
  const snapshots = proof.snapshots.flatMap(({ what, digest, file }, at) =>
    digestOf(what, file) === digest
      ? []
      : [
          {
            where: whereOf('snapshots', at),
            entry: null,
            sentence: 'The file is not the one that was pinned.',
          },
        ],
  )
  const personal = personalVerdict(entries, proof.private ?? [])
  const rootless =
    head.root === null || workshop[0]?.device === head.root
      ? []
      : [
          {
            where: whereOf(null, 0),
            entry: null,
            sentence: 'The root that it names did not make the workshop’s log.',
          },
        ]
  const beyond = proof.beyond
    ? [
        {
          where: whereOf(null, 0),
          entry: null,
          sentence: `A newer version made it (format ${proof.beyond.format}). What this version knows of it was looked at; the whole only that version can vouch for${proof.beyond.parts.length > 0 ? ` (it has ${proof.beyond.parts.map((part) => `“${part}”`).join(', ')} besides)` : ''}.`,
        },
      ]
    : []
  const broken = [
    ...beyond,
    ...rootless,
    ...inLog.map(({ entry, sentence }) => ({ where: whereOf('entries', entry), entry, sentence })),
    ...inWorkshop.map(({ entry, sentence }) => ({
      where: whereOf('workshop', entry),
      entry: null,
      sentence,
    })),
    ...personal.broken.map(({ value, sentence }) => ({
      where: whereOf('private', value),
      entry: null,
      sentence,
    })),
    ...snapshots,
  ]
  const root = head.root === null ? null : fingerprint(head.root)
  const rootTrusted = trusted === undefined ? null : isRoot(head.root, trusted)
  const state =
    rootTrusted && head.root !== null && inWorkshop.length === 0 ? workshopState(workshop, head.root) : null
  return {
    workshop: head.workshop,
    job: head.job,
    entries: entries.length,
    intact: broken.length === 0,
    broken,
    signers: signersOf(entries, head.root, state),
    root,
    rootTrusted,
    signOffs: signOffsOf(proof, (at) => inLog.some(({ entry }) => entry === at)),
    personal: { there: personal.there, erased: personal.erased },
    backDated: backDated(entries),
  }
}

const nothing: ProofVerdict = {
  workshop: '',
  job: '',
  entries: 0,
  intact: false,
  broken: [],
  signers: [],
  root: null,
  rootTrusted: null,
  signOffs: [],
  personal: { there: 0, erased: 0 },
  backDated: [],
}

const called: Readonly<Record<ProofList, string>> = {
  entries: 'entry',
  private: 'personal value',
  snapshots: 'pinned file',
  workshop: 'entry of the workshop’s log',
}

const whereOf = (list: ProofList | null, at: number): string =>
  list === null ? 'the file around the entries' : `${called[list]} ${at + 1}`

const isRoot = (root: string | null, trusted: string): boolean => {
  const said = trusted.toLowerCase().replace(/\s+/g, '')
  return root !== null && (said === root || said === fingerprint(root).replace(/\s+/g, ''))
}

function signersOf(
  entries: readonly SealedEntry[],
  root: string | null,
  state: WorkshopState | null,
): readonly SignerVerdict[] {
  const counts = new Map<string, number>()
  for (const { device } of entries) counts.set(device, (counts.get(device) ?? 0) + 1)
  return [...counts].map(([key, count]) => {
    const device = state?.devices.find((one) => one.device === key)
    const isRootKey = state !== null && key === root
    return {
      key,
      fingerprint: fingerprint(key),
      entries: count,
      hand: isRootKey ? 'known' : !device ? 'unknown' : device.revoked === null ? 'known' : 'revoked',
      name: isRootKey ? 'the workshop’s root' : (device?.name ?? null),
    }
  })
}

/** Of sign-offs that are themselves intact: what a broken one says, nobody signed. */
function signOffsOf(
  { entries, snapshots }: Proof,
  isBroken: (entry: number) => boolean,
): readonly SignOffVerdict[] {
  const pinned = new Set(snapshots.map(({ what, digest }) => `${what} ${digest}`))
  return coverageOf(entries).flatMap(({ entry, covers, late }) => {
    const sealed = entries[entry]!
    const read = signedShape.safeParse(sealed.data)
    if (!read.success || isBroken(entry)) return []
    const { data } = read
    const state = stateByRules(
      covers.map((i) => entries[i]!),
      data.fold,
    )
    const files = [
      ['front corner model', 'corner', data.corners.front],
      ['rear corner model', 'corner', data.corners.rear],
      ['spec sheet', 'spec', data.spec],
      ['kit', 'kit', data.kit],
    ] as const
    const verdict: SignOffVerdict = {
      entry,
      at: sealed.at,
      hand: data.hand,
      key: sealed.device,
      covers: covers.length,
      late,
      state:
        state === null
          ? 'made by other rules'
          : digestOf('state', state) === data.state
            ? 'comes out again'
            : 'does not come out',
      filesAmiss: files.flatMap(([name, what, digest]) =>
        digest === undefined || pinned.has(`${what} ${digest}`) ? [] : [name],
      ),
      engine: data.engine,
    }
    return [verdict]
  })
}
