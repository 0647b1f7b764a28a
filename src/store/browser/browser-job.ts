import { keptLog } from '../kept-log.ts'
import type { Appended, KeptJob, Whose, Writing } from '../log-store.ts'
import { refused } from '../refused.ts'
import { toAppend } from '../to-append.ts'
import { trustedLog } from '../trusted-log.ts'
import { alone } from './alone.ts'
import { besideInBrowser } from './beside-in-browser.ts'
import type { Database } from './database.ts'
import { allPieces, appendPiece, lostOf, type Seen, seenIn } from './pieces.ts'
import { recalledInBrowser } from './recalled-in-browser.ts'

/** How often a change is made anew because another window, without locks, came between. @source own choice */
const tries = 20

/**
 * A job in the browser's database: its log's lines in pieces, one to a change, with what it pins beside it.
 *
 * @source own derivation: docs/methods/record.md
 */
export function browserJob(database: Database, job: string): KeptJob {
  let known: Seen | null = null
  const look = async (): Promise<Seen> => {
    known = await seenIn(database, job, known)
    return known
  }
  return {
    read: async () => {
      const { log } = await look()
      if (!log) throw nothingKept(job)
      return keptLog(log, [])
    },
    reopen: async (trusted) => {
      const all = await allPieces(database, job)
      if (!all) throw nothingKept(job)
      const log = await trustedLog(all.bytes, trusted)
      const lost = lostOf({ lines: log.whole.entries }, all.due - all.bytes.length)
      return { ...log, spoilt: [...log.spoilt, ...lost] }
    },
    ...recalledInBrowser(database, job),
    change: (whose, write) =>
      alone(`${database.name}, job ${job}`, async () => {
        for (let left = tries; left > 0; left--) {
          const done = await changed({ database, job, seen: await look(), whose, write })
          if (done) return done
        }
        throw refused(
          'busy',
          job,
          `Another window is writing to job ${job} without an end.`,
          'Close the page’s other windows, then do the same again.',
        )
      }),
    ...besideInBrowser(database, job),
  }
}

const nothingKept = (job: string) =>
  refused('no-job', job, `Nothing of job ${job} is kept in this browser.`, 'Bring its file in.')

interface Change {
  readonly database: Database
  readonly job: string
  readonly seen: Seen
  readonly whose: Whose
  readonly write: Writing
}

/** Null where somebody else appended meanwhile: then it is to be made anew. */
async function changed({ database, job, seen, whose, write }: Change): Promise<Appended | null> {
  const { log } = seen
  const [bad] = log?.spoilt ?? []
  if (bad)
    throw refused(
      'spoilt',
      `entry ${bad.line}`,
      `Entry ${bad.line} of job ${job} is not what was kept: ${bad.sentence} Nothing was written.`,
      'Export what is intact, and bring it in again together with another copy of the job.',
    )
  const first = log?.entries[0]
  if (first && (first.workshop !== whose.workshop || first.job !== whose.job))
    throw refused(
      'other-job',
      `${first.workshop}, ${first.job}`,
      `What is kept here is job ${first.job} of “${first.workshop}”, not job ${whose.job} of “${whose.workshop}”. Nothing was written.`,
      'Give the job another number.',
    )
  const given = await write(log?.entries ?? [])
  const { entries, lines } = toAppend(given, log?.ids ?? new Set(), whose)
  const done = { appended: entries, known: given.length - entries.length, told: [] }
  if (entries.length === 0) return done
  const bytes = new TextEncoder().encode(lines.map((line) => `${line}\n`).join(''))
  return (await appendPiece(database, { job, workshop: whose.workshop, seen, bytes })) ? done : null
}
