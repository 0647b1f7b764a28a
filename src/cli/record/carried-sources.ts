import { type Reading, readCorner } from '../../corner/index.ts'
import { inCausalOrder } from '../../job/index.ts'
import { readKit } from '../../kit/index.ts'
import type { SheetSources } from '../../sheet/index.ts'
import { readSpec } from '../../spec/index.ts'
import { BadInput } from '../files/outcome.ts'
import { problemLines } from '../files/problem-lines.ts'
import { readSources } from '../files/read-sources.ts'
import type { Carried } from './carried.ts'
import { modelsPinned } from './models-beside.ts'

/** A job with the models it names: those it pins where it carries them, else those that lie beside it. */
export function carriedSources(job: Carried, given: readonly string[]): SheetSources {
  const { path, from, whose, snapshots } = job
  if (from === 'job file') return readSources(path, given)
  const entries = inCausalOrder(job.entries)
  const pinned = modelsPinned(entries, snapshots, given)
  const faults: string[] = []
  const model = <T>(role: (typeof pinned)[number]['role'], read: (json: unknown) => Reading<T>): T | null => {
    const one = pinned.find((found) => found.role === role)
    if (!one) return null
    if (!one.snapshot) {
      faults.push(
        `${path}: The job names the ${one.what} “${one.id}”, and does not carry it. Name its file with --with FILE.`,
      )
      return null
    }
    const reading = read(one.snapshot.file)
    if (reading.ok) return reading.value
    faults.push(...problemLines(`${path}, ${one.what} “${one.id}”`, reading.problems))
    return null
  }
  const front = model('front', readCorner)
  const rear = model('rear', readCorner)
  const spec = model('spec', readSpec)
  const kit = model('kit', readKit)
  if (faults.length > 0) throw new BadInput(faults)
  if (!front)
    throw new BadInput([
      `${path}: The job names no front corner model, so there is nothing to hold its record against.`,
    ])
  return { job: { ...whose, entries }, corners: { front, rear }, spec, kit }
}
