import { metricUnits, usUnits } from '../../quantity/index.ts'
import { arrivalSheetFrom, handoverSheetFrom } from '../../sheet/index.ts'
import { buildJob } from './build-job.ts'
import type { CounterAnswer, CounterAsk } from './counter-messages.ts'
import { noJob } from './no-job.ts'
import { plainOf } from './plain-of.ts'
import type { Shelf } from './shelf.ts'

/** The arrival or the handover of a job with these edits. */
export async function counterAnswer(
  shelf: Shelf,
  { turn, which, job: id, version, edits, units, offset, today }: CounterAsk,
): Promise<CounterAnswer> {
  try {
    const found = await shelf.find(id, version)
    if (!found) return { turn, sheet: null, trouble: noJob(id) }
    const sources = { ...found, job: buildJob(found.job, edits).job }
    const sheet =
      which === 'arrival'
        ? arrivalSheetFrom(sources, { offset, today })
        : handoverSheetFrom(sources, {
            offset,
            today,
            units: units === 'US' ? usUnits : metricUnits,
          })
    return { turn, sheet, trouble: null }
  } catch (error) {
    return { turn, sheet: null, trouble: plainOf(error) }
  }
}
