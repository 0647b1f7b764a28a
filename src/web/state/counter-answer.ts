import { arrivalSheetFrom } from '../../sheet/index.ts'
import { buildJob } from './build-job.ts'
import type { CounterAnswer, CounterAsk } from './counter-messages.ts'
import { noJob } from './no-job.ts'
import { plainOf } from './plain-of.ts'
import type { Shelf } from './shelf.ts'

/** The arrival of a job with these edits. */
export async function counterAnswer(
  shelf: Shelf,
  { turn, job: id, version, edits, offset, today }: CounterAsk,
): Promise<CounterAnswer> {
  try {
    const found = await shelf.find(id, version)
    if (!found) return { turn, sheet: null, trouble: noJob(id) }
    const sources = { ...found, job: buildJob(found.job, edits).job }
    return { turn, sheet: arrivalSheetFrom(sources, { offset, today }), trouble: null }
  } catch (error) {
    return { turn, sheet: null, trouble: plainOf(error) }
  }
}
