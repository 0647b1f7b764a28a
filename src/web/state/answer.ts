import type { Job } from '../../job/index.ts'
import { metricUnits, usUnits } from '../../quantity/index.ts'
import { type Sheet, type SheetSources, sheetFrom } from '../../sheet/index.ts'
import type { BuiltJob } from './build-job.ts'
import { isMade } from './is-made.ts'
import { dayOf } from './job-row.ts'
import { lastSealed } from './last-sealed.ts'
import type { Answer, Ask, BoltAnswer, Edit, Plain, Told, Units } from './messages.ts'
import { momentOf } from './moment-of.ts'
import { noJob } from './no-job.ts'
import { plainOf } from './plain-of.ts'
import type { Shelf } from './shelf.ts'

/** What becomes of a question: what was not understood at once; sheet and bolt book when they are asked for. */
export interface Answering {
  readonly told: Told
  readonly sheet: () => Answer
  readonly bolts: () => Promise<BoltAnswer>
}

/** Sheets worked out before, by job, log and units: undo and going back and forth between jobs cost nothing. */
const known = new Map<string, Sheet>()
const knownMost = 8
const choices = { metric: metricUnits, US: usUnits }

/** Reads the edits of a job. */
export async function answer(shelf: Shelf, { job: id, version, edits, units }: Ask): Promise<Answering> {
  try {
    const found = await shelf.find(id, version)
    if (!found) return nothingOf(noJob(id))
    const { job, refused, made, form } = await built(found.job, edits)
    const sources = { ...found, job }
    return {
      told: { refused, made, form, last: version === '' ? null : lastSealed(found.job) },
      sheet: () => sheetOf(id, sources, units),
      bolts: () => boltsOf(sources, units, dayOf(found.job) ?? momentOf(null).slice(0, 10)),
    }
  } catch (error) {
    return nothingOf(plainOf(error))
  }
}

/** The part that lays edits on a job is loaded with the first edit. */
async function built(job: Job, edits: readonly Edit[]): Promise<BuiltJob> {
  if (edits.length === 0) return { job, refused: [], made: isMade(job), form: null }
  const { buildJob } = await import('./build-job.ts')
  return buildJob(job, edits)
}

const nothingOf = (trouble: Plain): Answering => ({
  told: { refused: [], made: false, form: null, last: null },
  sheet: () => ({ sheet: null, trouble }),
  bolts: async () => ({ bolts: null, trouble }),
})

function sheetOf(id: string, sources: SheetSources, units: Units): Answer {
  const key = `${id} ${units} ${JSON.stringify(sources.job.entries)}`
  try {
    const sheet = known.get(key) ?? sheetFrom(sources, { units: choices[units] })
    known.delete(key)
    known.set(key, sheet)
    if (known.size > knownMost) known.delete(known.keys().next().value!)
    return { sheet, trouble: null }
  } catch (error) {
    return { sheet: null, trouble: plainOf(error) }
  }
}

/** The part that knows the bolt book is loaded when the first bolt book is asked for. */
async function boltsOf(sources: SheetSources, units: Units, today: string): Promise<BoltAnswer> {
  try {
    const { bolts } = await import('./bolts.ts')
    return { bolts: bolts(sources, { units: choices[units], today }), trouble: null }
  } catch (error) {
    return { bolts: null, trouble: plainOf(error) }
  }
}
