import type { History, Story } from './history.ts'
import { type Explained, explainedBy, type Hypothesis } from './hypothesis.ts'
import { logEvidence } from './log-evidence.ts'
import { logSum } from './log-sum.ts'
import { soundShare } from './suspect-priors.ts'

/** "No part at fault", as the readings see it. */
export interface SoundHypothesis {
  /** Log of its evidence over all ways that it may have come. */
  readonly log: number
  /** The same of the one that explains it best, were it the only one. */
  readonly most: number
  readonly best: Explained
}

/** Of misadjusted vehicles, those with all adjusters anywhere; the others have one elsewhere. @source own choice */
const allAnywhere = 0.4

/**
 * No part at fault, by how it came: set and left alone, all adjusters anywhere, or one of them somewhere else since.
 *
 * @source own derivation: docs/methods/findings.md
 */
export function soundHypothesis(
  histories: readonly History[],
  hypotheses: readonly Hypothesis[],
): SoundHypothesis {
  const slips = hypotheses.filter(({ family }) => family.suspect.kind === 'adjuster slipped or at its stop')
  const misadjusted = soundShare.misadjusted / (soundShare.healthy + soundShare.misadjusted)
  const of = (story: Story, share: number) => {
    const history = histories.find((one) => one.story === story)!
    const all = logEvidence(history, [])
    return { log: Math.log(share) + all.log, own: all.log, best: explainedBy(history, [], all) }
  }
  const ways = [
    of('set before', 1 - misadjusted),
    of('anywhere', misadjusted * (slips.length > 0 ? allAnywhere : 1)),
    ...slips.map(({ log, best }) => ({
      log: Math.log((misadjusted * (1 - allAnywhere)) / slips.length) + log,
      own: log,
      best,
    })),
  ]
  const top = ways.reduce((a, b) => (b.log > a.log ? b : a))
  return {
    log: logSum(ways.map(({ log }) => log)),
    most: Math.max(...ways.map(({ own }) => own)),
    best: top.best,
  }
}
