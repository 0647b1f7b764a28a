import { type Reading, readCorner } from '../../corner/index.ts'
import { inCausalOrder } from '../../job/index.ts'
import { readKit } from '../../kit/index.ts'
import { modelsOfLog, revealed } from '../../proof/index.ts'
import { Refusal } from '../../quantity/index.ts'
import { readSpec } from '../../spec/index.ts'
import { browserStore, privateBeside } from '../../store/browser/index.ts'
import type { LibraryJob } from './library.ts'

/**
 * A job that is kept on this device, with the files by which it is worked.
 *
 * @throws {Refusal} `no-job`, `no-model`, `bad-model`, `two-versions`, `spoilt`
 */
export async function keptJob(id: string): Promise<LibraryJob> {
  const kept = browserStore().job(id)
  const [{ whose, entries }, pinned] = await Promise.all([kept.read(), kept.pinned()])
  const ordered = inCausalOrder(entries)
  const models = modelsOfLog(ordered, pinned)
  const model = <T>(role: string, read: (json: unknown) => Reading<T>): T | null => {
    const one = models.find((found) => found.role === role)
    if (!one) return null
    if (!one.snapshot)
      throw refusal(
        'no-model',
        `The job is worked by the ${one.what} “${one.id}”, and that version of it is not kept here.`,
        'Bring in a file of the job from the device that has it.',
      )
    const reading = read(one.snapshot.file)
    if (reading.ok) return reading.value
    const [problem] = reading.problems
    throw refusal(
      'bad-model',
      `The ${one.what} “${one.id}” of this job cannot be read: ${problem!.field}: ${problem!.wrong}`,
      `Right would be: ${problem!.right}.`,
    )
  }
  const front = model('front', readCorner)
  if (!front)
    throw refusal(
      'no-model',
      'The job names no front corner, so nothing can be worked out for it.',
      'Choose a layout for it under Vehicles.',
    )
  return {
    id,
    job: {
      workshop: whose?.workshop ?? '',
      job: whose?.job ?? id,
      // As people read it: what is personal in its place, what was erased said to be.
      entries: revealed(ordered, (await privateBeside(kept, ordered)).values).entries,
    },
    corners: { front, rear: model('rear', readCorner) },
    spec: model('spec', readSpec),
    kit: model('kit', readKit),
  }
}

const refusal = (code: 'no-model' | 'bad-model', sentence: string, remedy: string) =>
  new Refusal<'no-model' | 'bad-model'>({ code, at: 'job', given: '', sentence, remedy })
