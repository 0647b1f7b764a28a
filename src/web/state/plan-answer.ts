import { type PlanOfJob, planOfJob, planSheetFrom, type SheetSources } from '../../sheet/index.ts'
import { buildJob } from './build-job.ts'
import { noJob } from './no-job.ts'
import { plainOf } from './plain-of.ts'
import type { PlanAnswer, PlanAsk, PlanChoice } from './plan-messages.ts'
import type { Shelf } from './shelf.ts'

/**
 * Layers no wider than this: the search then stays within some tens of megabytes. The first look takes about a
 * second on a telephone, the longer one half a minute.
 */
const widest = 2 ** 14
const budgets = { quick: 1e6, longer: 3e7 }

/** The last few plans that were searched: judging an order that is edited by hand searches nothing. */
const known = new Map<string, PlanOfJob>()
const knownMost = 6

/** The plan of a job with these edits, laid out and judged. */
export async function planAnswer(
  shelf: Shelf,
  { turn, job: id, version, edits, choice }: PlanAsk,
): Promise<PlanAnswer> {
  try {
    const found = await shelf.find(id, version)
    if (!found) return { turn, sheet: null, trouble: noJob(id) }
    const sources: SheetSources = { ...found, job: buildJob(found.job, edits).job }
    const planned = plannedOf(sources, choice)
    const { order } = choice
    return { turn, sheet: planSheetFrom(sources, { planned, ...(order ? { order } : {}) }), trouble: null }
  } catch (error) {
    return { turn, sheet: null, trouble: plainOf(error) }
  }
}

function plannedOf(sources: SheetSources, { goal, support, make, longer }: PlanChoice): PlanOfJob {
  const key = JSON.stringify([sources.job.job, sources.job.entries, goal, support, make, longer])
  const planned =
    known.get(key) ??
    planOfJob(sources, {
      ...(make ? { goal: { replace: [], make } } : goal ? { goal: { replace: goal } } : {}),
      ...(support ? { support } : {}),
      effort: { budget: longer ? budgets.longer : budgets.quick, widest },
    })
  known.delete(key)
  known.set(key, planned)
  if (known.size > knownMost) known.delete(known.keys().next().value!)
  return planned
}
