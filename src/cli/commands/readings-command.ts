import { foldJob, inCausalOrder, isSealed, readingsCsv, readReadingsCsv, writeJob } from '../../job/index.ts'
import { jobFolder, takeIn, writeWhole } from '../../store/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { problemLines, wholeOf } from '../files/problem-lines.ts'
import { readBytes } from '../files/read-bytes.ts'
import { type Carried, carried } from '../record/carried.ts'
import { deviceSigner } from '../record/device-signer.ts'
import { entriesAgainst } from '../record/entries-against.ts'
import { handAsked } from '../record/hand-asked.ts'

/** What `readings` can be told. */
export interface ReadingsOptions {
  readonly csv?: string
  readonly take?: string
  readonly person?: string
  readonly to?: string
  readonly semicolons?: boolean
  readonly overwrite?: boolean
}

const most = 5 * 1024 * 1024

/** `axlewright readings JOB`: all readings as a table; or, with --take, those of a table into the job. */
export async function readingsCommand(path: string, options: ReadingsOptions): Promise<Outcome> {
  const job = await carried(path)
  if (options.take !== undefined) return taken(job, options.take, options)
  const text = readingsCsv(job.entries, { separator: options.semicolons ? ';' : ',' })
  if (options.csv === undefined) return { out: text, code: 0 }
  writeWhole(options.csv, text, { replace: options.overwrite ?? false })
  const lines = Math.max(0, text.split('\r\n').length - 2)
  return { out: `${options.csv}: ${lines} lines of readings.\n`, code: 0 }
}

async function taken(job: Carried, file: string, options: ReadingsOptions): Promise<Outcome> {
  const { path, whose, entries } = job
  const state = foldJob(inCausalOrder(entries))
  const round = state.rounds.at(-1)?.number ?? 0
  const text = csvText(file)
  const { entries: fresh, atCells } = wholeOf(file, readReadingsCsv(text, round))
  const problems = entriesAgainst(job, fresh)
  if (problems.length > 0)
    throw new BadInput([...problemLines(file, atCells(problems)), 'Nothing was taken in.'])
  const count = `${fresh.length} ${fresh.length === 1 ? 'reading' : 'readings'} of round ${round}`
  if (job.from === 'folder') {
    if (options.person === undefined)
      throw new BadInput([`${path}: Whose hand? Say it with --person, initials or a sign.`])
    const hand = await handAsked(options.person, whose.workshop)
    const { told } = await takeIn(
      jobFolder(path),
      { path: file, whose, entries: [...entries.filter(isSealed), ...fresh] },
      { signer: await deviceSigner(), person: options.person, add: true },
    )
    return { out: `${[...hand, ...told, `${count} sealed, and on disk in ${path}.`].join('\n')}\n`, code: 0 }
  }
  if (job.from !== 'job file' || options.to === undefined)
    throw new BadInput([
      job.from === 'job file'
        ? `${path}: A job file is not written over. Name a new one with --to FILE.job.json.`
        : `${path}: Readings are taken into a job’s folder or a job file. Merge it into a folder first.`,
    ])
  const value = writeJob({ ...whose, entries: [...entries, ...fresh] })
  writeWhole(options.to, `${JSON.stringify(value, null, 2)}\n`, { replace: options.overwrite ?? false })
  return { out: `${options.to}: the job with ${count} at its end.\n`, code: 0 }
}

/** A table's text; spreadsheets write UTF-8 or, when they are old, the system's own code, which is told. */
export function csvText(file: string): string {
  const bytes = readBytes(file, most, 'Take fewer lines.')
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw new BadInput([`${file}: It is not written in UTF-8. Save it as “CSV UTF-8” from the spreadsheet.`])
  }
}
