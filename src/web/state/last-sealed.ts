import { coverageOf, type Entry, foldJob, isSealed, type Job } from '../../job/index.ts'
import type { LastSealed } from './messages.ts'

/** What frames the log stays, and an undo is not undone by the same button. */
const stays: readonly string[] = ['opened', 'signed off', 'taken back', 'works with']

/**
 * The last entry of a kept job that says something still and no sign-off covers. In causal order, so that two hands on
 * one job undo what came last to this device.
 */
export function lastSealed({ entries }: Job): LastSealed | null {
  const back = new Set(foldJob(entries).takenBack.flatMap(({ of }) => (typeof of === 'number' ? [of] : [])))
  const covered = new Set(coverageOf(entries).flatMap(({ covers }) => covers))
  const can = (one: Entry, i: number) =>
    isSealed(one) && !stays.includes(one.kind) && !back.has(i) && !covered.has(i)
  const last = entries.findLast(can)
  if (!last || !isSealed(last)) return null
  // What was said in one breath is taken back in one: a round with its readings.
  const places = entries.flatMap((one, i) =>
    can(one, i) && isSealed(one) && one.at === last.at && one.device === last.device ? [i] : [],
  )
  const found = entries[places[0]!]!
  const text = (name: string) => {
    const value = found.data[name]
    return typeof value === 'string' ? value : null
  }
  const [wheel, joint] = [text('wheel'), text('joint')]
  const label = [found.kind, text('stage') ?? text('to') ?? text('what'), joint?.replaceAll('-', ' '), wheel]
  return {
    entries: places,
    label: label.filter((one) => typeof one === 'string').join(', '),
    wheel,
    joint,
  }
}
