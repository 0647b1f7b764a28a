import type { JobState, Round } from '../job/index.ts'
import type { Sheet } from './sheet.ts'
import type { SheetSources } from './sources.ts'

const ordinals = [
  'zeroth',
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
]

/** The title block: which vehicle, which job, which readings, whose values. */
export function sheetTitle(
  { job, spec, kit, corners }: SheetSources,
  state: JobState,
  round: Round | null,
): Sheet['title'] {
  const methods = [...new Set((round?.readings ?? []).map((fact) => fact.observation.method))]
  const bay = state.bay ? (kit?.floors?.[state.bay.bay]?.name ?? state.bay.bay) : null
  const sources = [...new Set([spec?.source, corners.front.source, corners.rear?.source].filter(Boolean))]
  return {
    vehicle: state.opened?.vehicle ?? 'Vehicle not named',
    job: job.job,
    workshop: job.workshop,
    round: round
      ? `Readings, ${ordinals[round.number] ?? `${round.number}th`} round (${round.purpose})`
      : 'No readings yet',
    method: [...methods, ...(bay ? [bay] : [])].join(' · '),
    source: sources.join('; ') || 'no sheet of limits',
  }
}
