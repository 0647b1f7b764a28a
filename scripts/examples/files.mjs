// The files of examples/: read whole or not at all, jobs written with stamps.
import { readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { readJsonText } from '../../src/corner/index.ts'
import { readJob, writeJob } from '../../src/job/index.ts'

const examples = join(dirname(dirname(dirname(fileURLToPath(import.meta.url)))), 'examples')
/** The value of a reading, or everything that is wrong with it. */
export const must = (read) => {
  if (!read.ok) throw new Error(JSON.stringify(read.problems, null, 1))
  return read.value
}
/** A file's plain value. */
export const file = (path) => must(readJsonText(readFileSync(join(examples, path), 'utf8')))

/** Writes a job with stamps a few minutes apart, after reading it back. */
export function write(path, { job, entries, day }) {
  let minute = 0
  const stamped = entries.map(([kind, data, wait = 4]) => {
    minute += wait
    const hours = String(7 + Math.floor(minute / 60)).padStart(2, '0')
    return { kind, data, at: `${day}T${hours}:${String(minute % 60).padStart(2, '0')}:00+01:00` }
  })
  const value = must(readJob({ format: 1, workshop: 'Harbour yard, bay 2', job, entries: stamped }))
  const { format, kind, ...rest } = writeJob(value)
  writeFileSync(
    join(examples, path),
    `${JSON.stringify({ $schema: '../../schema/job.schema.json', format, kind, ...rest }, null, 2)}\n`,
  )
  console.log(`examples/${path}: ${entries.length} entries`)
}
