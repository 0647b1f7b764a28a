import { axesToTouch } from './axes-to-touch.ts'
import { type Candidate, judgedCandidate, leastSure } from './candidate.ts'
import type { FewestTask } from './fewest-task.ts'
import { isNearEnd } from './is-near-end.ts'
import { onSteps } from './on-steps.ts'
import type { SearchSpace } from './search-space.ts'
import { settingMeant } from './setting-meant.ts'
import { type Settled, settledStrokes } from './settled-strokes.ts'

/** Where the threshold is out of reach, a smaller set may be this much less sure than all adjusters together. @source own choice */
const margin = 0.02
/** Up to this many adjusters every set is tried (512 sets); beyond, adjusters are let go one by one. @source own choice */
const everySet = 9

/** A set whose least sure reading misses the goal by more than this is not drawn out. @source own choice */
const doubt = 0.1

/** Chances this near one another are alike: two standard deviations of 2000 draws. @source own choice */
const sameChance = 0.01

/**
 * The fewest adjusters that do: the smallest set whose settings bring the judged rows inside with the
 * threshold's probability, else the smallest within 0.02 of all adjusters together. A set that leaves an
 * eccentric within 10° of its end counts one larger for each. Among sets of one size that are sure alike: the
 * nearest to preferred.
 *
 * @source own derivation: docs/methods/moves.md
 */
export function fewestAdjusters(task: FewestTask): Candidate {
  const all = axesToTouch(task)
  const full = made(task, all, 0)!
  const goal = Math.min(task.threshold, full.chance - margin)
  if (all.length > everySet) return letGo(task, all, { full, goal })
  const needed = setsNeeded(task, goal)
  // what all the others together cannot do without it, fewer of them cannot either
  const required = all.filter((j) =>
    isHopeless(
      task,
      all.filter((other) => other !== j),
      goal,
    ),
  )
  const free = all.filter((j) => !required.includes(j))
  const atEnd: { size: number; one: Candidate }[] = []
  for (let size = Math.max(1, required.length); size < all.length; size++) {
    const good: Candidate[] = []
    for (const more of setsOf(free, size - required.length)) {
      const touched = [...required, ...more].sort((a, b) => a - b)
      if (!needed.every((helpers) => touched.some((j) => helpers.has(j)))) continue
      const one = made(task, touched, goal)
      if (!one || one.chance < goal) continue
      const ends = endsReached(task.space, one)
      if (ends === 0) good.push(one)
      else atEnd.push({ size: size + ends, one })
    }
    good.push(...atEnd.filter((each) => each.size === size).map((each) => each.one))
    if (good.length > 0) return better(good, task.threshold)
  }
  return full
}

/** For each row that misses the goal as it stands: the axes that change it at all. A set without any of them is no use. */
function setsNeeded({ space, judge, judged, offsets }: FewestTask, goal: number): ReadonlySet<number>[] {
  const strokes = Float64Array.from(space.axes, (axis) => axis.baseStroke)
  const still = { settings: space.axes.map((axis) => axis.base), strokes, cost: 0 }
  const count = space.axes.length
  return judged
    .filter((i) => leastSure(space, judge, still, { judged: [i], offsets }) < goal - doubt)
    .map((i) => new Set([...space.axes.keys()].filter((j) => space.touches[i * count + j])))
}

/** Whether a set misses the goal wherever it may be set, steps or no steps. */
const isHopeless = (task: FewestTask, touched: readonly number[], goal: number): boolean =>
  missesAt(task, touched, settledStrokes(task.space, task.aims, task.offsets, touched), goal)

function missesAt(
  task: FewestTask,
  touched: readonly number[],
  { strokes, cost }: Settled,
  goal: number,
): boolean {
  const { space, judge } = task
  const settings = space.axes.map((axis) => axis.base)
  for (const j of touched) settings[j] = settingMeant(space.axes[j]!, strokes[j]!)
  return leastSure(space, judge, { settings, strokes, cost }, task) < goal - doubt
}

/** Settles, brings onto steps and judges one set; null when it cannot meet the goal. */
function made(task: FewestTask, touched: readonly number[], goal: number): Candidate | null {
  const { space, aims, offsets, judge } = task
  const settled = settledStrokes(space, aims, offsets, touched)
  const { strokes } = settled
  if (goal > 0 && missesAt(task, touched, settled, goal)) return null
  const stepped = onSteps(space, aims, offsets, touched, strokes)
  if (goal > 0 && leastSure(space, judge, stepped, task) < goal - doubt) return null
  return judgedCandidate(space, judge, stepped, { ...task, atLeast: goal })
}

/** Nearest to preferred among those that reach the threshold; where none does, among those as sure as the surest. */
function better(good: readonly Candidate[], threshold: number): Candidate {
  const surest = Math.max(...good.map((one) => one.chance))
  const floor = Math.min(threshold, surest - sameChance)
  return good.filter((one) => one.chance >= floor).reduce((a, b) => (b.cost < a.cost ? b : a))
}

function endsReached(space: SearchSpace, { settings }: Candidate): number {
  return space.axes.filter(
    ({ adjuster, base }, j) => settings[j] !== base && isNearEnd(adjuster, settings[j]!),
  ).length
}

/** From all adjusters downward: the one whose loss costs least goes, as long as the goal is still met. */
function letGo(
  task: FewestTask,
  all: readonly number[],
  { full, goal }: { readonly full: Candidate; readonly goal: number },
): Candidate {
  let best = full
  let touched = all
  while (touched.length > 1) {
    const good = touched
      .map((gone) => touched.filter((j) => j !== gone))
      .flatMap((left) => {
        const one = made(task, left, goal)
        return one && one.chance >= goal ? [{ left, one }] : []
      })
    if (good.length === 0) break
    best = better(
      good.map((each) => each.one),
      task.threshold,
    )
    touched = good.find((each) => each.one === best)!.left
  }
  return best
}

function setsOf(all: readonly number[], size: number): number[][] {
  if (size === 0) return [[]]
  return all.flatMap((first, i) => setsOf(all.slice(i + 1), size - 1).map((rest) => [first, ...rest]))
}
