import { type Reading, readCorner } from '../../corner/index.ts'
import { inCausalOrder } from '../../job/index.ts'
import { readKit } from '../../kit/index.ts'
import { revealed } from '../../proof/index.ts'
import type { SheetSources } from '../../sheet/index.ts'
import { readSpec } from '../../spec/index.ts'
import { BadInput } from '../files/outcome.ts'
import { problemLines } from '../files/problem-lines.ts'
import { readSources } from '../files/read-sources.ts'
import type { Carried } from './carried.ts'
import { modelsPinned } from './models-beside.ts'

/**
 * A job as people read it, personal values in their places, with the models it names: those it pins where it carries them,
 * else those that lie beside it.
 */
export function carriedSources(carried: Carried, given: readonly string[]): SheetSources {
  const { path, from, whose, snapshots, values } = carried
  const [bad] = carried.spoilt
  if (bad)
    throw new BadInput([
      `${path}, line ${bad.line}: ${bad.sentence} Merge it with another copy of the job first.`,
    ])
  if (from === 'job file') {
    const sources = readSources(path, given)
    return { ...sources, job: { ...sources.job, entries: revealed(sources.job.entries, values).entries } }
  }
  const entries = inCausalOrder(carried.entries)
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
  const shown = revealed(entries, carried.values)
  return { job: { ...whose, entries: shown.entries }, corners: { front, rear }, spec, kit }
}
