import type { Findings, Suspect } from '../../../src/findings/index.ts'
import type { FaultJob } from './fault-job.ts'

/** How one answer stands to the truth. */
export interface Scored {
  readonly job: FaultJob
  /** Place of the group that holds the truth, from 0; −1 where no group does. */
  readonly group: number
  /** The same of the true suspect by itself, most likely first. */
  readonly place: number
  /** Size and posterior of the first group, and whether it holds the truth. */
  readonly size: number
  readonly stated: number
  readonly held: boolean
  /** Belief in the true suspect itself. */
  readonly belief: number
  /** The first group speaks of a fault, and the answer is not "I cannot tell". */
  readonly finds: boolean
  readonly cannotTell: boolean
  readonly ms: number
}

/** Kinds of which only the kind and the wheel count: where exactly is the asker's business. */
const anywhere = /^(bush clamped hanging|worn kingpin|out of adjustment|tyre pulls|bent strut tube)$/

/** Whether a suspect is the truth; a healthy vehicle's truth is that it is at most out of adjustment. */
export function isTruth(truth: FaultJob['truth'], suspect: Suspect): boolean {
  if (truth === 'healthy' || truth.kind === 'out of adjustment') return suspect.kind === 'out of adjustment'
  if (suspect.kind !== truth.kind) return false
  if (truth.kind === 'tyre pulls') return true
  return (
    suspect.axle === truth.axle &&
    suspect.side === truth.side &&
    (suspect.at === truth.at || anywhere.test(truth.kind) || truth.at === null)
  )
}

/** Holds an answer against the truth. */
export function scored(job: FaultJob, { groups, cannotTell }: Findings, ms: number): Scored {
  const { truth } = job
  const isIt = (suspect: Suspect): boolean => isTruth(truth, suspect)
  const first = groups[0]!
  const all = groups.flatMap(({ suspects }) => suspects).sort((a, b) => b.posterior - a.posterior)
  const group = groups.findIndex(({ suspects }) => suspects.some(({ suspect }) => isIt(suspect)))
  return {
    job,
    group,
    place: all.findIndex(({ suspect }) => isIt(suspect)),
    size: first.suspects.length,
    stated: first.posterior,
    held: group === 0,
    belief: all.reduce((sum, { suspect, posterior }) => sum + (isIt(suspect) ? posterior : 0), 0),
    finds: !cannotTell && !first.suspects.some(({ suspect }) => suspect.kind === 'out of adjustment'),
    cannotTell,
    ms,
  }
}

/** Ten bins of equal count: what was stated, and what came true. */
function calibrationOf(list: readonly { readonly stated: number; readonly held: boolean }[]): {
  readonly bins: readonly { readonly stated: number; readonly held: number }[]
  readonly error: number
  /** What perfectly honest answers would miss by, of chance alone. */
  readonly chance: number
} {
  const sorted = [...list].sort((a, b) => a.stated - b.stated)
  const bins = Array.from({ length: 10 }, (_, b) => {
    const bin = sorted.slice(Math.floor((b * sorted.length) / 10), Math.floor(((b + 1) * sorted.length) / 10))
    return {
      stated: bin.reduce((sum, one) => sum + one.stated, 0) / bin.length,
      held: bin.filter(({ held }) => held).length / bin.length,
    }
  })
  const error = bins.reduce((sum, { stated, held }) => sum + Math.abs(stated - held), 0) / bins.length
  // mean size of a binomial's deviation, near enough normal
  const chance =
    bins.reduce(
      (sum, { stated }) => sum + Math.sqrt((2 / Math.PI) * stated * (1 - stated) * (10 / list.length)),
      0,
    ) / bins.length
  return { bins, error, chance }
}

/** How much more was stated than came true, over all answers, in standard errors of honest ones. */
function overConfidenceOf(list: readonly { readonly stated: number; readonly held: boolean }[]): number {
  let [more, variance] = [0, 0]
  for (const { stated, held } of list) {
    more += stated - (held ? 1 : 0)
    variance += stated * (1 - stated)
  }
  return more / Math.sqrt(variance)
}

/** Least belief that counts, so that a truth nobody thought of costs much but not everything. */
const least = 1e-4

/** What the issue of it asks for, of a run. */
export function summaryOf(list: readonly Scored[]) {
  const faults = list.filter(({ job }) => isFault(job))
  const visible = faults.filter(({ job }) => job.distance >= 2)
  const sound = list.filter(({ job }) => !isFault(job))
  const share = (of: readonly Scored[], is: (one: Scored) => boolean): number =>
    of.length === 0 ? Number.NaN : of.filter(is).length / of.length
  const mean = (of: readonly Scored[], x: (one: Scored) => number): number =>
    of.reduce((sum, one) => sum + x(one), 0) / of.length
  const times = list.map(({ ms }) => ms).sort((a, b) => a - b)
  return {
    jobs: list.length,
    faults: faults.length,
    visible: visible.length,
    first: share(visible, ({ group }) => group === 0),
    firstThree: share(visible, ({ group }) => group >= 0 && group < 3),
    size: mean(list, ({ size }) => size),
    sizeVisible: mean(visible, ({ size }) => size),
    aloneFirst: share(visible, ({ place }) => place === 0),
    aloneFirstThree: share(visible, ({ place }) => place >= 0 && place < 3),
    missing: faults.filter(({ group }) => group < 0).length,
    calibration: calibrationOf(list),
    overConfident: overConfidenceOf(list),
    logScore: mean(list, ({ belief }) => Math.log(Math.max(least, belief))),
    falseFindings: share(sound, ({ finds }) => finds),
    falseHealthy: share(
      sound.filter(({ job }) => job.truth === 'healthy'),
      ({ finds }) => finds,
    ),
    found: share(visible, ({ finds }) => finds),
    cannotTell: share(list, ({ cannotTell }) => cannotTell),
    median: times[Math.floor(times.length / 2)]!,
    slowest: times.at(-1)!,
    p95: times[Math.floor(0.95 * times.length)]!,
  }
}

export const isFault = ({ truth }: FaultJob): boolean =>
  truth !== 'healthy' && truth.kind !== 'out of adjustment'

/** The log score of any other way to answer, on the same scale. */
export const logScoreOf = (beliefs: readonly number[]): number =>
  beliefs.reduce((sum, p) => sum + Math.log(Math.max(least, p)), 0) / beliefs.length
