import type { Answer, Edit, JobRow } from './messages.ts'

/** The jobs that come with the page. */
export const jobRows = (): readonly JobRow[] => []

/** The sheet of a job with the person's edits. */
export const answer = (_job: string, _edits: readonly Edit[]): Answer => ({
  sheet: null,
  refused: [],
  form: null,
  trouble: {
    sentence: 'This version cannot work out a sheet yet.',
    remedy: 'Wait for the next one.',
  },
})
