import type { Corner } from '../../corner/index.ts'
import type { AnyFile, Job } from '../../job/index.ts'
import type { Kit } from '../../kit/index.ts'
import type { Spec } from '../../spec/index.ts'

/** A job with everything that it names. */
export interface LibraryJob {
  readonly id: string
  readonly job: Job
  readonly corners: { readonly front: Corner; readonly rear: Corner | null }
  readonly spec: Spec | null
  readonly kit: Kit | null
}

/** A file of one of the formats, read. */
export type ReadFile = AnyFile & { readonly name: string }

/**
 * The jobs among some files, each with the corner models, spec sheet and kit that it names.
 *
 * @throws {Error} when a corner model is not there: the files come with the page, so the fault is ours
 */
export function library(read: readonly ReadFile[]): readonly LibraryJob[] {
  const corner = (id: unknown) =>
    read.flatMap((file) => (file.format === 'corner' && file.value.id === id ? [file.value] : []))[0] ?? null
  const spec = (id: unknown) =>
    read.flatMap((file) => (file.format === 'spec' && file.value.id === id ? [file.value] : []))[0] ?? null
  const kit = (id: unknown) =>
    read.flatMap((file) => (file.format === 'kit' && file.value.id === id ? [file.value] : []))[0] ?? null
  return read.flatMap((file) => {
    if (file.format !== 'job') return []
    const opened = file.value.entries.find(({ kind }) => kind === 'opened')?.data ?? {}
    const names = (opened['corners'] ?? {}) as { front?: unknown; rear?: unknown }
    const front = corner(names.front)
    if (!front) throw new Error(`${file.name} names the corner model ${names.front}, which is not there.`)
    return [
      {
        id: file.name.replace('.job.json', ''),
        job: file.value,
        corners: { front, rear: corner(names.rear) },
        spec: spec(opened['spec']),
        kit: kit(opened['kit']),
      },
    ]
  })
}
