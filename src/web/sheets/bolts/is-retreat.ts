import type { DoingAct } from '../../../sheet/index.ts'

/** Whether an act takes a joint back instead of onward: undoing it, or a look that it did not pass. */
export const isRetreat = ({ entry }: DoingAct): boolean =>
  entry?.kind === 'undone' ||
  (entry?.kind === 'checked' && (entry.data as { passed?: unknown }).passed === false)
