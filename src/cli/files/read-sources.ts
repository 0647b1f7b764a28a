import { readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { type Corner, readCorner } from '../../corner/index.ts'
import { foldJob, readJob } from '../../job/index.ts'
import { readKit } from '../../kit/index.ts'
import type { SheetSources } from '../../sheet/index.ts'
import { readSpec } from '../../spec/index.ts'
import { BadInput } from './outcome.ts'
import { wholeOf } from './problem-lines.ts'
import { readJsonFile } from './read-json-file.ts'

/** Files that may hold what a job names: those given, then those beside the job, then one folder up. */
function candidates(job: string, given: readonly string[]): readonly string[] {
  const folder = dirname(job)
  const beside = [folder, join(folder, '..')].flatMap((place) => {
    try {
      return readdirSync(place)
        .filter((name) => /\.(corner|spec|kit)\.json$/.test(name))
        .map((name) => join(place, name))
    } catch {
      return []
    }
  })
  return [...given, ...beside]
}

const endings = { corner: '.corner.json', spec: '.spec.json', kit: '.kit.json' } as const

/** Finds one model by its id; files that cannot be read are only an error when they were asked for. */
function find(kind: keyof typeof endings, id: string, files: readonly string[], given: readonly string[]) {
  for (const path of files) {
    if (!given.includes(path) && !path.endsWith(endings[kind])) continue
    const value = readJsonFile(path) as { id?: unknown } | null
    if (value?.id === id) return { path, value }
  }
  throw new BadInput([
    `The job names the ${kind} “${id}”, and no ${endings[kind]} file beside it (or one folder up) has that id. Put it there, or name it with --with FILE.`,
  ])
}

/** A job file and everything it names, each checked whole. */
export function readSources(jobPath: string, given: readonly string[] = []): SheetSources {
  const job = wholeOf(jobPath, readJob(readJsonFile(jobPath)))
  const { opened } = foldJob(job.entries)
  if (!opened)
    throw new BadInput([
      `${jobPath}: The job has no “opened” entry, so nobody knows which vehicle it is. Write one as its first entry.`,
    ])
  const files = candidates(jobPath, given)
  const corner = (id: string): Corner => {
    const found = find('corner', id, files, given)
    return wholeOf(found.path, readCorner(found.value))
  }
  const spec = opened.spec === undefined ? null : find('spec', opened.spec, files, given)
  const kit = opened.kit === undefined ? null : find('kit', opened.kit, files, given)
  const { front, rear } = opened.corners
  return {
    job,
    corners: { front: corner(front), rear: rear === undefined ? null : corner(rear) },
    spec: spec ? wholeOf(spec.path, readSpec(spec.value)) : null,
    kit: kit ? wholeOf(kit.path, readKit(kit.value)) : null,
  }
}
