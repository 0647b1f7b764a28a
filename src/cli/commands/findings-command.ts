import { usUnits } from '../../quantity/index.ts'
import { findingsOfJob } from '../../sheet/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { jobSources } from '../record/job-sources.ts'
import { findingsText } from '../text/findings-text.ts'
import { plainText } from '../text/plain-text.ts'
import type { JobOptions } from './sheet-command.ts'

/** Options of `axlewright findings`. */
export interface FindingsCommandOptions extends JobOptions {
  readonly round?: string
}

/** `axlewright findings JOB`: which part explains the readings. Ends with 1 when a fault stands out or nothing can be told. */
export async function findingsCommand(job: string, options: FindingsCommandOptions): Promise<Outcome> {
  const sources = await jobSources(job, options.with ?? [])
  const round = options.round === undefined ? undefined : Number(options.round)
  if (round !== undefined && !Number.isInteger(round))
    throw new BadInput([`--round “${options.round}” is no number of a round. Say 1, 2 and so on.`])
  const sheet = findingsOfJob(sources, { round, ...(options.us ? { units: usUnits } : {}) })
  if (round !== undefined && sheet.round !== round)
    throw new BadInput([
      `The log has no round ${round} with readings. ${sheet.rounds.length > 0 ? `It has: ${sheet.rounds.map(({ words }) => words.toLowerCase()).join('; ')}.` : 'It has none yet.'}`,
    ])
  const text = `${findingsText(sheet).trim()}\n`
  const out = options.json ? `${JSON.stringify(sheet, null, 2)}\n` : options.plain ? plainText(text) : text
  return { out, code: sheet.answer.startsWith('No part need') && sheet.troubles.length === 0 ? 0 : 1 }
}
