import type { Job } from './entry.ts'
import type { JobFile } from './job-schema.ts'

/**
 * A job as a file's value: every entry exactly as it was written.
 *
 * @source own derivation: docs/methods/formats.md
 * @example writeJob({ workshop: 'Harbour yard', job: '7-0412', entries: [] }).format // 1
 */
export function writeJob({ workshop, job, entries, private: values }: Job): JobFile {
  return {
    format: 1,
    kind: 'job',
    workshop,
    job,
    entries: entries.map((entry) => ({ ...entry })),
    ...(values ? { private: values.map((one) => ({ ...one })) } : {}),
  }
}
