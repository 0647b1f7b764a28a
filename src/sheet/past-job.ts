import type { PastJob } from '../adjust/index.ts'
import { adjustersOf, type Corner, familyOf } from '../corner/index.ts'
import type { JobState } from '../job/index.ts'
import type { SheetSources } from './sources.ts'
import { pointsKnown } from './wheel-setups.ts'

/** Names of a job and of its vehicle, as jobs that learn from one another know them: no plate, no VIN. */
export const nameOfJob = ({ job }: SheetSources, state: JobState): Pick<PastJob, 'job' | 'vehicle'> => ({
  job: `${job.workshop}, ${job.job}`,
  vehicle: (state.opened?.vehicle ?? job.job).trim().replace(/\s+/g, ' ').toLowerCase(),
})

/** What a corner is to jobs that learn from one another: its drawing, and its axle and layout with how its points are known. */
export const cornerOfJob = (corner: Corner): Pick<PastJob, 'model' | 'layout'> => ({
  model: textMark(
    JSON.stringify([
      corner.layout,
      Object.entries(corner.points)
        .map(([name, { at }]) => [name, at] as const)
        .sort(([a], [b]) => (a < b ? -1 : 1)),
      corner.wheel.camber,
      corner.wheel.toe,
      adjustersOf(corner),
    ]),
  ),
  layout: `${corner.axle} ${familyOf(corner.layout)}, ${pointsKnown(corner)}`,
})

const start = 0x811c9dc5
const prime = 0x01000193

/** A short mark that changes when a text does: FNV-1a, 32 bit (IETF draft-eastlake-fnv). */
function textMark(text: string): string {
  let mark = start
  for (let i = 0; i < text.length; i++) mark = Math.imul(mark ^ text.charCodeAt(i), prime)
  return (mark >>> 0).toString(16).padStart(8, '0')
}
