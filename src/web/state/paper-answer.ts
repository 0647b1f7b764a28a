import { foldJob, type Job } from '../../job/index.ts'
import { type Paper, paperHtml, paperPdf } from '../../proof/index.ts'
import { metricUnits, usUnits } from '../../quantity/index.ts'
import { calendarOfJob, proofSheetFrom } from '../../sheet/index.ts'
import { buildJob } from './build-job.ts'
import { noJob } from './no-job.ts'
import { paperFonts } from './paper-fonts.ts'
import type { PaperAnswer, PaperAsk } from './paper-messages.ts'
import { paperSealOf } from './paper-seal-of.ts'
import { plainOf } from './plain-of.ts'
import type { Shelf } from './shelf.ts'

declare const __ENGINE__: string

/** The job on paper, as a page, or its follow-ups as a calendar: a file for people. */
export async function paperAnswer(
  shelf: Shelf,
  { as, job: id, version, edits, units }: PaperAsk,
): Promise<PaperAnswer> {
  try {
    const found = await shelf.find(id, version)
    if (!found) return { trouble: noJob(id) }
    const { job } = buildJob(found.job, edits)
    const text = (name: string, type: string, words: string) => ({
      name: `${job.job}${name}`,
      type,
      bytes: new TextEncoder().encode(words),
    })
    if (as === 'ics') return text('-follow-ups.ics', 'text/calendar', calendarOf(job))
    const isUs = units === 'US'
    const paper: Paper = {
      sheet: proofSheetFrom({ ...found, job }, { units: isUs ? usUnits : metricUnits }),
      seal: await paperSealOf(id, job, version !== ''),
      version: __ENGINE__,
    }
    const size = isUs ? 'Letter' : 'A4'
    if (as === 'html') return text('-proof.html', 'text/html', paperHtml(paper, size))
    const created = job.entries.findLast(({ at }) => at)?.at ?? null
    const bytes = await paperPdf(paper, { size, fonts: await paperFonts(), created })
    return { name: `${job.job}-proof.pdf`, type: 'application/pdf', bytes }
  } catch (error) {
    return { trouble: plainOf(error) }
  }
}

const calendarOf = (job: Job): string =>
  calendarOfJob(foldJob(job.entries), {
    workshop: job.workshop,
    job: job.job,
    stamp: new Date().toISOString(),
  })
