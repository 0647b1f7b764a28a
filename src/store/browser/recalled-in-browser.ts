import type { KeptJob } from '../log-store.ts'
import type { Database } from './database.ts'

/**
 * What can be made again out of a log, in the browser.
 *
 * @source own derivation: docs/methods/record.md
 */
export function recalledInBrowser(database: Database, job: string): Pick<KeptJob, 'recall' | 'remember'> {
  return {
    recall: (what) =>
      database.use((opened) => opened.get('recalled', [job, what])).then((text) => text ?? null),
    remember: async (what, text) => {
      try {
        await database.use((opened) => opened.put('recalled', text, [job, what]))
      } catch {
        // No more room: then it is made again next time.
      }
    },
  }
}
