import { Refusal } from '../../quantity/index.ts'
import { type Sheet, type SheetSources, sheetFrom } from '../../sheet/index.ts'
import { buildJob } from './build-job.ts'
import { demoFiles } from './demo-files.ts'
import { library } from './library.ts'
import type { Answer, Edit, JobRow, Plain, Told } from './messages.ts'
import { textMark } from './text-mark.ts'

const jobs = library(demoFiles)

/** The jobs that come with the page. */
export function jobRows(): readonly JobRow[] {
  return jobs.map(({ id, job }) => {
    const opened = job.entries.find(({ kind }) => kind === 'opened')?.data ?? {}
    return {
      id,
      vehicle: String(opened['vehicle'] ?? id),
      job: `Job ${job.job}`,
      source: opened['invented'] === true ? 'invented for the demo' : job.workshop,
      mark: textMark(JSON.stringify(job.entries)),
    }
  })
}

/** Sheets worked out before, by job and log: undo and going back and forth between jobs cost nothing. */
const known = new Map<string, Sheet>()
const knownMost = 8

/** Reads the edits of a job: what was not understood at once, and the sheet when it is asked for. */
export function answer(id: string, edits: readonly Edit[]): { told: Told; worked: () => Answer } {
  const none: Told = { refused: [], made: false, form: null }
  const found = jobs.find((job) => job.id === id)
  if (!found) {
    const trouble = { sentence: `There is no job "${id}" on this page.`, remedy: 'Choose one under Jobs.' }
    return { told: none, worked: () => ({ sheet: null, trouble }) }
  }
  try {
    const { job, refused, made, form } = buildJob(found.job, edits)
    return { told: { refused, made, form }, worked: () => workedOut(id, { ...found, job }) }
  } catch (error) {
    return { told: none, worked: () => ({ sheet: null, trouble: plain(error) }) }
  }
}

function workedOut(id: string, sources: SheetSources): Answer {
  const key = `${id} ${JSON.stringify(sources.job.entries)}`
  try {
    const sheet = known.get(key) ?? sheetFrom(sources)
    known.delete(key)
    known.set(key, sheet)
    if (known.size > knownMost) known.delete(known.keys().next().value!)
    return { sheet, trouble: null }
  } catch (error) {
    return { sheet: null, trouble: plain(error) }
  }
}

/** A refusal keeps its own words; anything else is a fault of the program and says so. */
function plain(error: unknown): Plain {
  return error instanceof Refusal
    ? { sentence: error.sentence, remedy: error.remedy }
    : {
        sentence: `Something in the program is wrong: ${error instanceof Error ? error.message : String(error)}.`,
        remedy: 'Undo the last change to go on; what was typed is kept.',
      }
}
