import type { Entry } from '../job/index.ts'

/**
 * When the personal values of a job are due to be erased: so many months after the last day that an entry of it names. The
 * clocks of the devices say it, since nothing else does.
 *
 * @param months as the workshop keeps them
 * @returns the day, "2026-11-30"; null while no entry has a time
 * @source own derivation: docs/methods/record.md
 * @example personalDue([{ kind: 'note', data: { text: 'a' }, at: '2026-01-31T09:00:00Z' }], 1) // '2026-02-28'
 */
export function personalDue(entries: readonly Entry[], months: number): string | null {
  const times = entries.flatMap(({ at }) => {
    const time = at === undefined ? Number.NaN : Date.parse(at)
    return Number.isNaN(time) ? [] : [time]
  })
  if (times.length === 0) return null
  const last = new Date(times.reduce((a, b) => Math.max(a, b)))
  const [year, month] = [last.getUTCFullYear(), last.getUTCMonth() + months]
  const daysInMonth = new Date(Date.UTC(year, month + 1, 0)).getUTCDate()
  const due = new Date(Date.UTC(year, month, Math.min(last.getUTCDate(), daysInMonth)))
  return Number.isNaN(due.getTime()) ? null : due.toISOString().slice(0, 10)
}
