import { Refusal } from '../quantity/index.ts'
import type { Addition } from './addition.ts'
import type { Assembly, PartNode, StandIn } from './assembly.ts'
import type { Choice } from './choice.ts'
import { choiceMinutes } from './choice-minutes.ts'
import type { Goal } from './goal.ts'
import { nextNeed } from './next-need.ts'
import type { PlanRefusal } from './plan-refusal.ts'
import { type WholeGoal, wholeGoal } from './whole-goal.ts'

/** The cheapest complete choice, and the one that nearly won. @source definition */
export interface NeededChoices {
  readonly best: Choice
  readonly minutes: number
  readonly second: { readonly choice: Choice; readonly minutes: number } | null
  /** How many partial choices were looked at. */
  readonly looked: number
}

/**
 * The cheapest complete set of joints to open and parts to take off for a goal: an AND/OR search, exact by branch
 * and bound. Every partial choice costs no more than what it grows into, so one that is dearer than the second best
 * is cut. A second that only does more than the best, or frees the other end of the same hose or link, is none.
 *
 * @param lacks stand-ins whose tool the kit lacks: they cost the borrowing
 * @param undone what is undone already and stays in every choice
 * @throws {Refusal} `no-way` when no complete choice exists; `too-many-ways`; `no-such-failure`, `no-way-left`
 * @source Land and Doig 1960 for the bound; own derivation: docs/methods/plan.md
 */
export function neededChoices(
  assembly: Assembly,
  asked: Goal,
  lacks: readonly StandIn[] = [],
  undone: Choice | null = null,
): NeededChoices {
  const goal = wholeGoal(assembly, asked)
  const apart = undone ? null : bySide(assembly, goal)
  if (apart) {
    const [left, right] = apart.map((one) => searched(assembly, one, lacks, nothing)) as [
      NeededChoices,
      NeededChoices,
    ]
    const joined = sumOf(assembly, left, right, lacks)
    if (joined) return joined
  }
  return searched(assembly, goal, lacks, undone ?? nothing)
}

const nothing: Choice = {
  open: new Set(),
  bench: new Set(),
  off: new Set(),
  standIns: {},
  letDown: new Set(),
  raised: new Set(),
  why: {},
}

/** What is dearer than the best by more than this has not nearly won: minutes. */
const nearly = 30
/** After so many partial choices only the cheapest is still sought, and none is told to have nearly won. */
const many = 40_000
/** So many are looked at: a search that is not through by then says so. */
const most = 600_000

function searched(
  assembly: Assembly,
  goal: WholeGoal,
  lacks: readonly StandIn[],
  from: Choice,
): NeededChoices {
  const found: { choice: Choice; minutes: number }[] = []
  const priced = choiceMinutes(assembly, lacks)
  const seen = new Set<string>()
  let looked = 0
  const limit = () => {
    const best = found[0]?.minutes ?? Number.POSITIVE_INFINITY
    return looked > many ? best : (found[1]?.minutes ?? best + nearly)
  }

  function descend(choice: Choice): void {
    const signature = signatureOf(choice)
    if (seen.has(signature)) return
    seen.add(signature)
    looked++
    if (looked > most) throw tooManyWays(goal)
    const minutes = priced(choice)
    if (minutes >= limit()) return
    const lacking = nextNeed(assembly, goal, choice)
    if (lacking) {
      const grown = lacking.map((addition) => added(choice, addition))
      const ranked = grown.map((one) => ({ one, cost: priced(one) }))
      ranked.sort((a, b) => a.cost - b.cost)
      for (const { one } of ranked) descend(one)
      return
    }
    keep(assembly, found, { choice, minutes })
  }
  descend(from)
  const [best, second] = found
  if (!best)
    throw new Refusal<PlanRefusal>({
      code: 'no-way',
      at: 'goal',
      given: [...goal.replace, ...(goal.open ?? [])].join(', '),
      sentence:
        'No set of joints takes this apart: a joint of it is reached by no access that the corner model knows.',
      remedy: 'Look at the access conditions and holds of the corner model.',
    })
  return { best: best.choice, minutes: best.minutes, second: looked > many ? null : (second ?? null), looked }
}

/** An answer that was not proven is not given as the cheapest. */
const tooManyWays = ({ replace, open = [] }: WholeGoal) =>
  new Refusal<PlanRefusal>({
    code: 'too-many-ways',
    at: 'goal',
    given: [...replace, ...open].join(', '),
    sentence: `There are more than ${most} ways to begin taking this apart, and the search for the cheapest was given up.`,
    remedy:
      'Plan in steps: first what hangs on it, one part at a time, then this from the state as recorded.',
  })

/** Keeps the best and the second; the second is none that only does more than the best. */
function keep(
  assembly: Assembly,
  found: { choice: Choice; minutes: number }[],
  one: { readonly choice: Choice; readonly minutes: number },
): void {
  found.push(one)
  found.sort((a, b) => a.minutes - b.minutes || (signatureOf(a.choice) < signatureOf(b.choice) ? -1 : 1))
  const best = found[0]!
  const others = found
    .slice(1)
    .filter(
      ({ choice }) =>
        !doesMore(choice, best.choice) && kindOf(assembly, choice) !== kindOf(assembly, best.choice),
    )
  found.splice(1, found.length, ...others.slice(0, 1))
}

const ends: readonly PartNode['kind'][] = ['hose', 'lead', 'drop link', 'height-sensor rod']

/** A choice without what tells only at which end a hose, lead or link is freed. */
function kindOf({ joints, parts }: Assembly, choice: Choice): string {
  const kept = (ids: ReadonlySet<string>) =>
    new Set([...ids].filter((id) => !joints[id]!.joins.some((part) => ends.includes(parts[part]!.kind))))
  return signatureOf({ ...choice, open: kept(choice.open), bench: kept(choice.bench) })
}

const doesMore = (more: Choice, less: Choice): boolean =>
  (['open', 'bench', 'off', 'letDown', 'raised'] as const).every((of) =>
    [...less[of]].every((id) => more[of].has(id)),
  ) && Object.entries(less.standIns).every(([hold, standIn]) => more.standIns[hold] === standIn)

function added(choice: Choice, addition: Addition): Choice {
  const ids = [
    ...(addition.open ?? []),
    ...(addition.bench ?? []),
    ...(addition.off ?? []),
    ...(addition.standIn ? [`hold ${addition.standIn[0]}`] : []),
    ...(addition.letDown ? [`let down ${addition.letDown}`] : []),
    ...(addition.raised ? [`raised ${addition.raised}`] : []),
  ]
  const fresh = ids.filter((id) => choice.why[id] === undefined)
  return {
    open: new Set([...choice.open, ...(addition.open ?? [])]),
    bench: new Set([...choice.bench, ...(addition.bench ?? [])].filter((id) => !addition.open?.includes(id))),
    off: new Set([...choice.off, ...(addition.off ?? [])]),
    standIns: addition.standIn
      ? { ...choice.standIns, [addition.standIn[0]]: addition.standIn[1] }
      : choice.standIns,
    letDown: addition.letDown ? new Set([...choice.letDown, addition.letDown]) : choice.letDown,
    raised: addition.raised ? new Set([...choice.raised, addition.raised]) : choice.raised,
    why: { ...choice.why, ...Object.fromEntries(fresh.map((id) => [id, addition.why])) },
  }
}

function signatureOf({ open, bench, off, standIns, letDown, raised }: Choice): string {
  const sorted = (set: ReadonlySet<string>) => [...set].sort().join(',')
  const held = Object.entries(standIns)
    .map((pair) => pair.join('='))
    .sort()
    .join(',')
  return [open, bench, off, letDown, raised].map(sorted).concat(held).join('|')
}

/** A goal whose parts and joints all stand on one side or the other, as two goals; null when it is not so. */
function bySide(assembly: Assembly, goal: WholeGoal): readonly [WholeGoal, WholeGoal] | null {
  const sideOf = (id: string) => (assembly.parts[id] ?? assembly.joints[id])?.side
  const all = [...goal.replace, ...goal.off, ...(goal.open ?? [])]
  if (!all.some((id) => sideOf(id) === 'left') || !all.some((id) => sideOf(id) === 'right')) return null
  if (!all.every((id) => sideOf(id))) return null
  const of = (side: string): WholeGoal => ({
    replace: goal.replace.filter((id) => sideOf(id) === side),
    open: (goal.open ?? []).filter((id) => sideOf(id) === side),
    off: goal.off.filter((id) => sideOf(id) === side),
    cut: goal.cut.filter((id) => sideOf(id) === side),
  })
  return [of('left'), of('right')]
}

/** Two searches as one, when nothing of one touches the other: then the sum of the best is the best. */
function sumOf(
  assembly: Assembly,
  left: NeededChoices,
  right: NeededChoices,
  lacks: readonly StandIn[],
): NeededChoices | null {
  const all = ({ best }: NeededChoices) => [
    ...best.open,
    ...best.bench,
    ...best.off,
    ...Object.keys(best.standIns),
  ]
  const ofSide = (ids: readonly string[], side: string) =>
    ids.every((id) => (assembly.parts[id] ?? assembly.joints[id])?.side === side)
  if (!ofSide(all(left), 'left') || !ofSide(all(right), 'right')) return null
  if (
    [...Object.values(left.best.standIns), ...Object.values(right.best.standIns)].includes('axle on stands')
  )
    return null
  const best = united(left.best, right.best)
  const minutes = choiceMinutes(assembly, lacks)(best)
  const seconds = [
    left.second && {
      choice: united(left.second.choice, right.best),
      extra: left.second.minutes - left.minutes,
    },
    right.second && {
      choice: united(left.best, right.second.choice),
      extra: right.second.minutes - right.minutes,
    },
  ]
    .filter((one) => one !== null)
    .sort((a, b) => a.extra - b.extra)
  const second = seconds[0] ? { choice: seconds[0].choice, minutes: minutes + seconds[0].extra } : null
  return { best, minutes, second, looked: left.looked + right.looked }
}

const united = (a: Choice, b: Choice): Choice => ({
  open: new Set([...a.open, ...b.open]),
  bench: new Set([...a.bench, ...b.bench]),
  off: new Set([...a.off, ...b.off]),
  standIns: { ...a.standIns, ...b.standIns },
  letDown: new Set([...a.letDown, ...b.letDown]),
  raised: new Set([...a.raised, ...b.raised]),
  why: { ...b.why, ...a.why },
})
