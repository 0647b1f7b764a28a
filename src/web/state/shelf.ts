import { demoFiles } from './demo-files.ts'
import { type LibraryJob, library } from './library.ts'

/** The jobs that a worker can read: the files that came with the page, and what is kept on this device. */
export interface Shelf {
  /** The jobs that came with the page. */
  readonly demo: Promise<readonly LibraryJob[]>
  /** One job with everything that it names; null where there is none of that name. */
  readonly find: (id: string, version: string) => Promise<LibraryJob | null>
}

/** How many kept jobs a worker holds read: going back and forth between two costs nothing. */
const most = 4

/** Opens the shelf; a kept job is read when it is first asked for, and again when its version is another. */
export function openShelf(): Shelf {
  const demo = demoFiles().then(library)
  const read = new Map<string, { version: string; job: Promise<LibraryJob> }>()
  return {
    demo,
    find: async (id, version) => {
      const came = (await demo).find((job) => job.id === id)
      if (came) return came
      if (version === '') return null
      const known = read.get(id)
      read.delete(id)
      const job =
        known?.version === version ? known.job : import('./kept-job.ts').then(({ keptJob }) => keptJob(id))
      read.set(id, { version, job })
      if (read.size > most) read.delete(read.keys().next().value!)
      job.catch(() => read.delete(id))
      return job
    },
  }
}
