import { type Entry, foldJob, inCausalOrder } from '../job/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { Snapshot } from './proof.ts'
import type { ProofRefusal } from './proof-refusal.ts'

/** A file by which a job is worked: which it is, and it itself where it is pinned. @source definition */
export interface ModelOfLog {
  readonly role: 'front' | 'rear' | 'spec' | 'kit'
  readonly what: Snapshot['what']
  readonly id: string
  /** Which version the log names; null where it names the id alone. */
  readonly digest: string | null
  readonly snapshot: Snapshot | null
}

const roles = [
  ['front', 'corner'],
  ['rear', 'corner'],
  ['spec', 'spec'],
  ['kit', 'kit'],
] as const

/**
 * The files by which a job is worked, each under its role: the version that the log names last, else the only one that is
 * pinned under the id that it was opened with.
 *
 * @param pinned what is kept with the log
 * @throws {Refusal} `two-versions` where an id is pinned twice and the log does not say which counts
 * @source own derivation: docs/methods/record.md
 */
export function modelsOfLog(entries: readonly Entry[], pinned: readonly Snapshot[]): readonly ModelOfLog[] {
  const { opened, worksWith } = foldJob(inCausalOrder(entries))
  const named = {
    front: opened?.corners.front,
    rear: opened?.corners.rear,
    spec: opened?.spec,
    kit: opened?.kit,
  }
  return roles.flatMap(([role, what]): readonly ModelOfLog[] => {
    const said = worksWith.findLast((one) => one.role === role)
    if (said) {
      const snapshot = pinned.find((one) => one.what === what && one.digest === said.digest) ?? null
      return [{ role, what, id: said.id, digest: said.digest, snapshot }]
    }
    const id = named[role]
    if (id === undefined) return []
    const [first, second] = pinned.filter(
      (one) => one.what === what && (one.file as { id?: unknown } | null)?.id === id,
    )
    if (second)
      throw new Refusal<ProofRefusal>({
        code: 'two-versions',
        at: role,
        given: id,
        sentence: `The job pins two versions of the ${what} “${id}”, and its log does not say by which the work is done.`,
        remedy: 'Name the file that counts.',
      })
    return [{ role, what, id, digest: null, snapshot: first ?? null }]
  })
}
