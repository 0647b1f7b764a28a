import type { Entry } from '../../job/index.ts'
import { digestOf, type ModelOfLog, modelsOfLog, type Snapshot } from '../../proof/index.ts'
import { candidates, findModel } from '../files/find-model.ts'

/** Those of the files that a job names that lie beside it, or are given. */
export function modelsBeside(
  job: string,
  entries: readonly Entry[],
  given: readonly string[],
): readonly ModelOfLog[] {
  const files = candidates(job, given)
  return modelsOfLog(entries, []).map((one) => {
    const file = findModel(one.what, one.id, files, given)?.value
    return { ...one, snapshot: file === undefined ? null : snapshotOf(one.what, file) }
  })
}

/** The files that a job pins, each under its role: the one given, else the version that counts by the log. */
export function modelsPinned(
  entries: readonly Entry[],
  pinned: readonly Snapshot[],
  given: readonly string[],
): readonly ModelOfLog[] {
  const named = modelsOfLog(entries, []).map((one) => {
    const file = findModel(one.what, one.id, given, given)?.value
    return file === undefined ? null : { ...one, snapshot: snapshotOf(one.what, file) }
  })
  // What is given need not be told apart among what is pinned.
  const left = pinned.filter(
    ({ file }) => !named.some((one) => one !== null && one.id === (file as { id?: unknown } | null)?.id),
  )
  return modelsOfLog(entries, left).map((one, i) => named[i] ?? one)
}

const snapshotOf = (what: Snapshot['what'], file: unknown): Snapshot => ({
  what,
  digest: digestOf(what, file),
  file,
})
