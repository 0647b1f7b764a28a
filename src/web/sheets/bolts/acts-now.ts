import type { BoltDoing, DoingAct, SheetBolt } from '../../../sheet/index.ts'
import type { Edit } from '../../state/messages.ts'

/** What was ticked on the way at a joint since the log last heard of it. */
export function ticked(
  edits: readonly Edit[],
  { wheel, joint }: Pick<SheetBolt, 'wheel' | 'joint'>,
): readonly string[] {
  const here = edits.filter((edit) => edit.kind === 'done' && edit.wheel === wheel && edit.joint === joint)
  const from = here.findLastIndex((edit) => edit.kind === 'done' && edit.entry !== null)
  return here.slice(from + 1).flatMap((edit) => (edit.kind === 'done' ? [edit.label] : []))
}

/** What can be said now, and what comes after it: two facts are two touches. */
export interface ActsNow {
  readonly ready: readonly DoingAct[]
  readonly later: DoingAct | null
}

/** A thing that is only ticked on the way makes the one after it ready. */
export function actsNow({ acts }: Pick<BoltDoing, 'acts'>, ticks: readonly string[]): ActsNow {
  const isTicked = (act: DoingAct) => act.entry === null && ticks.includes(act.label)
  const ready: DoingAct[] = []
  const later: DoingAct[] = []
  acts.forEach((act, i) => {
    if (isTicked(act)) return
    const before = acts.slice(0, i)
    const reached = before.some(isTicked) && before.every(isTicked)
    if (act.ready || reached) ready.push(act)
    else later.push(act)
  })
  return { ready, later: later[0] ?? null }
}
