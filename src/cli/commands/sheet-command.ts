import { writeFileSync } from 'node:fs'
import { usUnits } from '../../quantity/index.ts'
import { type BoltSheet, boltSheetFrom, type Sheet, sheetFrom } from '../../sheet/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { sheetHtml } from '../html/sheet-html.ts'
import { jobSources } from '../record/job-sources.ts'
import { learnedOf } from '../record/jobs-sources.ts'
import { clampText } from '../text/clamp-text.ts'
import { movesText } from '../text/moves-text.ts'
import { plainText } from '../text/plain-text.ts'
import { sheetText } from '../text/sheet-text.ts'
import { verdictCode } from './verdict-code.ts'

/** Options of the commands that read a job. */
export interface JobOptions {
  readonly with?: readonly string[]
  readonly json?: boolean
  readonly html?: string
  readonly plain?: boolean
  readonly us?: boolean
  /** Other jobs whose moves have something to teach. */
  readonly learnedFrom?: readonly string[]
}

const sheetOf = async (job: string, options: JobOptions): Promise<Sheet> => (await bothOf(job, options)).sheet

/** The sheet of a job and its bolt book, from one reading of its files. */
async function bothOf(
  job: string,
  options: JobOptions,
): Promise<{ readonly sheet: Sheet; readonly book: BoltSheet }> {
  const given = options.with ?? []
  const learned = await learnedOf(options.learnedFrom ?? [], given)
  const sources = { ...(await jobSources(job, given)), learned }
  const asked = options.us ? { units: usUnits } : {}
  return { sheet: sheetFrom(sources, asked), book: boltSheetFrom(sources, asked) }
}

const asJson = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`

/** `axlewright sheet JOB`: the whole sheet as text, as JSON, or as a page for paper. */
export async function sheetCommand(job: string, options: JobOptions): Promise<Outcome> {
  const { sheet, book } = await bothOf(job, options)
  const code = verdictCode(sheet)
  if (options.html !== undefined) {
    try {
      writeFileSync(options.html, sheetHtml(sheet, book))
    } catch (error) {
      throw new BadInput([
        `${options.html} cannot be written (${(error as NodeJS.ErrnoException).code}). Name a file in a folder that exists.`,
      ])
    }
    if (!options.json)
      return { out: `The sheet is in ${options.html}; open it in a browser to read or print it.\n`, code }
  }
  return {
    out: options.json
      ? asJson(sheet)
      : options.plain
        ? plainText(sheetText(sheet, book, { plain: true }))
        : sheetText(sheet, book),
    code,
  }
}

/** `axlewright moves JOB`: how far to turn each adjuster, and how sure that is. */
export async function movesCommand(job: string, options: JobOptions): Promise<Outcome> {
  const sheet = await sheetOf(job, options)
  return {
    out: options.json ? asJson(sheet.moves) : `${movesText(sheet).trim()}\n`,
    code: verdictCode(sheet),
  }
}

/** `axlewright clamp JOB`: the pose in which bush bolts are final. */
export async function clampCommand(job: string, options: JobOptions): Promise<Outcome> {
  const sheet = await sheetOf(job, options)
  return { out: options.json ? asJson(sheet.clamp) : `${clampText(sheet).trim()}\n`, code: 0 }
}
