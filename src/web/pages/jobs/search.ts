import type { JobRow } from '../../state/messages.ts'

/** Whether a job holds all these words: in its vehicle, complaint, number, or a lot or number of a part. */
export function isFound({ line }: JobRow, words: string): boolean {
  const held = [line.vehicle, line.complaint, line.job, line.stands, ...line.lots].join(' ').toLowerCase()
  return words
    .toLowerCase()
    .split(/\s+/)
    .every((word) => held.includes(word))
}
