import {
  type AxleSetup,
  type LearnedFactor,
  learnAcrossJobs,
  learnedFactors,
  type Move,
} from '../adjust/index.ts'
import type { Corner } from '../corner/index.ts'
import type { JobState } from '../job/index.ts'
import type { TaughtFor } from './learned.ts'
import { factorText } from './learned-words.ts'
import { cornerOfJob, nameOfJob } from './past-job.ts'
import type { SheetSources } from './sources.ts'

/** What other jobs have taught, for the vehicle of a job; null where none were given. */
export function taughtFor(sources: SheetSources, state: JobState): TaughtFor | null {
  const { job, vehicle } = nameOfJob(sources, state)
  const past = (sources.learned ?? []).filter((one) => one.job !== job)
  return past.length === 0 ? null : { taught: learnAcrossJobs(past), job: { vehicle } }
}

/** A change smaller than this is not worth telling. @source own choice */
const notable = 0.03

/** How surely an adjuster answers otherwise than its points say. */
const surely = ({ factor, spread }: LearnedFactor) => Math.abs(factor - 1) / spread

/** On what the moves count beside the points: how many jobs, of what, and the answer that differs most surely; null when on nothing. */
export function learnedSays(
  { taught, job }: TaughtFor,
  setups: readonly { readonly corner: Corner; readonly setup: AxleSetup }[],
  moves: readonly Move[],
): string | null {
  const [vehicle, model, layout] = [new Set<string>(), new Set<string>(), new Set<string>()]
  const factors: LearnedFactor[] = []
  for (const { corner, setup } of setups) {
    const turned = moves.filter(({ end, side }) => end === setup.end && side !== 'both')
    if ('axle' in setup || turned.length === 0) continue
    const own = cornerOfJob(corner)
    for (const one of taught.past) {
      if (one.layout !== own.layout || taught.trust.get(one.job)! < 1 / 2) continue
      const level = one.model !== own.model ? layout : one.vehicle !== job.vehicle ? model : vehicle
      level.add(one.job)
    }
    const ids = new Set(turned.map(({ adjuster }) => adjuster.id))
    const said = setup.left.response ? learnedFactors(setup.left, setup.left.response) : []
    factors.push(...said.filter(({ adjuster }) => ids.has(adjuster.id)))
  }
  const all = new Set([...vehicle, ...model, ...layout])
  if (all.size === 0) return null
  const of = [
    vehicle.size > 0 ? `${vehicle.size} on this vehicle` : '',
    model.size > 0 ? `${model.size} on others of its model` : '',
    layout.size > 0 ? `${layout.size} on other models of its layout` : '',
  ].filter(Boolean)
  const most = factors.reduce<LearnedFactor | null>(
    (best, one) => (best && surely(best) >= surely(one) ? best : one),
    null,
  )
  const taughtWhat =
    most && Math.abs(most.factor - 1) >= notable
      ? `the ${most.adjuster.name} changes ${most.angle} ${factorText(most)} times as much as its points say`
      : 'its adjusters answer as their points say'
  return `The moves count on what ${all.size === 1 ? 'one other job' : `${all.size} other jobs`} taught (${of.join(', ')}): ${taughtWhat}.`
}
