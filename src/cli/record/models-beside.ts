import { type Entry, foldJob, inCausalOrder } from '../../job/index.ts'
import { digestOf, type Snapshot } from '../../proof/index.ts'
import { candidates, findModel } from '../files/find-model.ts'
import { BadInput } from '../files/outcome.ts'

/** A file that a job names. */
export interface NamedModel {
  readonly role: 'front' | 'rear' | 'spec' | 'kit'
  readonly what: Snapshot['what']
  readonly id: string
}

/** The files that a job names. */
function modelsNamed(entries: readonly Entry[]): readonly NamedModel[] {
  const { opened } = foldJob(inCausalOrder(entries))
  const named = [
    ['front', 'corner', opened?.corners.front],
    ['rear', 'corner', opened?.corners.rear],
    ['spec', 'spec', opened?.spec],
    ['kit', 'kit', opened?.kit],
  ] as const
  return named.flatMap(([role, what, id]) => (id === undefined ? [] : [{ role, what, id }]))
}

/** Those of them that lie beside the job, or are given. */
export function modelsBeside(
  job: string,
  entries: readonly Entry[],
  given: readonly string[],
): readonly (NamedModel & { readonly snapshot: Snapshot | null })[] {
  const files = candidates(job, given)
  return modelsNamed(entries).map((one) => {
    const file = findModel(one.what, one.id, files, given)?.value
    return { ...one, snapshot: file === undefined ? null : snapshotOf(one.what, file) }
  })
}

/** The files that a job pins, each under its role: the one given, else the only one that is pinned under its id. */
export function modelsPinned(
  entries: readonly Entry[],
  pinned: readonly Snapshot[],
  given: readonly string[],
): readonly (NamedModel & { readonly snapshot: Snapshot | null })[] {
  return modelsNamed(entries).map((one) => {
    const named = findModel(one.what, one.id, given, given)?.value
    if (named !== undefined) return { ...one, snapshot: snapshotOf(one.what, named) }
    const [first, second] = pinned.filter(
      ({ what, file }) => what === one.what && (file as { id?: unknown } | null)?.id === one.id,
    )
    if (second)
      throw new BadInput([
        `The job pins two versions of the ${one.what} “${one.id}”. Say with --with FILE by which one the work was done.`,
      ])
    return { ...one, snapshot: first ?? null }
  })
}

const snapshotOf = (what: Snapshot['what'], file: unknown): Snapshot => ({
  what,
  digest: digestOf(what, file),
  file,
})
