import type { Plain } from './messages.ts'

/** An address that names no job. */
export const noJob = (id: string): Plain => ({
  sentence: `There is no job "${id}" on this device.`,
  remedy: 'Choose one under Jobs, or bring its file in.',
})
