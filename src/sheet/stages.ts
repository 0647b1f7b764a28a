import type { JobState } from '../job/index.ts'
import type { Sheet, Stage } from './sheet.ts'

const stages: readonly Stage[] = ['Arrival', 'Findings', 'Plan', 'Strip', 'Refit', 'Angles', 'Handover']

/** Where the job is, as far as its log says: arrival is done with heights and pressures, angles are what is open here. */
export function stagesOf(state: JobState): Sheet['stages'] {
  const arrived = state.opened !== null && state.pressures !== null && state.heights.length > 0
  return stages.map((stage) => ({
    stage,
    state: stage === 'Angles' ? 'now' : stage === 'Arrival' && arrived ? 'done' : 'open',
  }))
}
