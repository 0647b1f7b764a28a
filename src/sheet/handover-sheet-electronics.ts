import type { EntryData, JobState } from '../job/index.ts'
import type { ArrivalNoted } from './arrival-sheet.ts'
import type { HandoverElectronics } from './handover-sheet.ts'
import type { HandoverTouched } from './handover-sheet-touched.ts'

type What = EntryData<'electronics'>['what']

/**
 * Electronic systems that count from the geometry: which are due, and why, by what was touched; and how each stands.
 * What is due comes first.
 *
 * @source common practice, no source
 */
export function handoverElectronics(
  state: JobState,
  touched: HandoverTouched,
  noted: (fact: JobState['electronics'][number]) => ArrivalNoted,
): readonly HandoverElectronics[] {
  const { geometry, heightSensors, leads, springs } = touched
  const by = (names: readonly string[], why: string) =>
    names.length > 0
      ? `${names.slice(0, 2).join(', ')}${names.length > 2 ? ` and ${names.length - 2} more` : ''}: ${why}`
      : null
  const due: readonly (readonly [What, string | null])[] = [
    ['steering angle zero', by(geometry, 'straight ahead may be another place now.')],
    ['forward camera', by(geometry, 'it looks along the thrust line and counts from the heights.')],
    ['forward radar', by(geometry, 'it looks along the thrust line.')],
    ['headlamps', by(geometry, 'they are aimed from the heights.')],
    [
      'ride height sensor',
      by([...heightSensors, ...springs], 'its rod was off, or the height is another one.'),
    ],
    ['warning lamp looked at', by(leads, 'a lead was unplugged.')],
  ]
  const rows = due.map(([what, why]): HandoverElectronics => {
    const last = state.electronics.findLast((one) => one.what === what)
    return { what, why, state: last?.state ?? null, noted: last ? noted(last) : null }
  })
  return [...rows.filter(({ why }) => why !== null), ...rows.filter(({ why }) => why === null)]
}
