import type { Wedge } from './adjuster.ts'
import type { Aim } from './aim.ts'
import type { Axis } from './axis.ts'
import { bestCombination } from './best-combination.ts'
import { costOf } from './cost-of.ts'
import type { SearchSpace } from './search-space.ts'
import { settingMeant } from './setting-meant.ts'
import { settledFrom } from './settled-strokes.ts'
import { shimChange } from './shim-change.ts'
import { strokeMeant } from './stroke-meant.ts'

/** Settings that a hand can make, with their strokes. */
export interface OnSteps {
  /** One per axis; untouched axes keep their present setting. */
  readonly settings: readonly number[]
  readonly strokes: Float64Array
  readonly cost: number
}

const most = 8
/** Up to so many positions all are tried. @source own choice */
const fewPositions = 8

/**
 * Brings strokes onto real steps: whole steps counted from the present setting, packs that can be made of the
 * shims at hand, inside the range. Up to eight axes try every choice of the step below and above; more than
 * eight take the nearest and improve one after the other.
 *
 * @source own derivation: docs/methods/moves.md
 */
export function onSteps(
  space: SearchSpace,
  aims: readonly (Aim | null)[],
  offsets: Float64Array,
  touched: readonly number[],
  wanted: Float64Array,
): OnSteps {
  const coarse = touched.filter((j) => isCoarse(space.axes[j]!))
  const { fixed, strokes: sought } = coarseFirst(space, aims, offsets, { touched, coarse, wanted })
  const choices = touched.map((j) => {
    const at = fixed.get(j)
    return at !== undefined ? [at] : stepsNear(space.axes[j]!, settingMeant(space.axes[j]!, sought[j]!))
  })
  const settings = space.axes.map((axis) => axis.base)
  const strokes = Float64Array.from(space.axes, (axis) => axis.baseStroke)
  const set = (k: number, setting: number) => {
    const j = touched[k]!
    settings[j] = setting
    strokes[j] = strokeMeant(space.axes[j]!, setting)
  }
  const cost = () => costOf(space, aims, offsets, strokes)
  choices.forEach((choice, k) => {
    set(k, choice[0]!)
  })
  if (touched.length <= most) {
    const both = choices.map((choice, k) =>
      choice.map((setting) => strokeMeant(space.axes[touched[k]!]!, setting)),
    )
    bestCombination(space, aims, offsets, { at: strokes, touched, choices: both }).forEach((which, k) => {
      set(k, choices[k]![which]!)
    })
    return { settings, strokes, cost: cost() }
  }
  let best = cost()
  for (let better = true; better; ) {
    better = false
    choices.forEach((choice, k) => {
      for (const setting of choice) {
        const before = settings[touched[k]!]!
        if (setting === before) continue
        set(k, setting)
        const there = cost()
        if (there < best) {
          best = there
          better = true
        } else set(k, before)
      }
    })
  }
  return { settings, strokes, cost: best }
}

/** Steps so wide that what is left over is taken up by the others. */
const isCoarse = ({ adjuster: { kind } }: Axis) =>
  kind === 'offset sleeve' || kind === 'wedge' || kind === 'top plate'

/** Brings what has wide steps onto one of them, one after the other; the rest settles anew each time. */
function coarseFirst(
  space: SearchSpace,
  aims: readonly (Aim | null)[],
  offsets: Float64Array,
  {
    touched,
    coarse,
    wanted,
  }: {
    readonly touched: readonly number[]
    readonly coarse: readonly number[]
    readonly wanted: Float64Array
  },
): { readonly fixed: ReadonlyMap<number, number>; readonly strokes: Float64Array } {
  const fixed = new Map<number, number>()
  let strokes = wanted
  for (const j of coarse) {
    const axis = space.axes[j]!
    const free = touched.filter((k) => k !== j && !fixed.has(k))
    let best: { readonly setting: number; readonly cost: number; readonly strokes: Float64Array } | null =
      null
    for (const setting of widerSteps(axis, settingMeant(axis, strokes[j]!))) {
      const start = strokes.slice()
      start[j] = strokeMeant(axis, setting)
      const one = settledFrom(space, aims, offsets, { free, start })
      if (!best || one.cost < best.cost) best = { setting, ...one }
    }
    fixed.set(j, best!.setting)
    strokes = best!.strokes
  }
  return { fixed, strokes }
}

/** Of few positions all, else those next to the wanted one. */
function widerSteps(axis: Axis, wanted: number): readonly number[] {
  const { adjuster, base } = axis
  const [low, high] = adjuster.range
  if (adjuster.kind === 'wedge' || (high - low) / adjuster.step > fewPositions) return stepsNear(axis, wanted)
  const room = adjuster.step * 1e-6
  const found: number[] = []
  for (let k = Math.ceil((low - base) / adjuster.step - 1e-6); base + k * adjuster.step <= high + room; k++)
    found.push(k === 0 ? base : Math.min(high, Math.max(low, base + k * adjuster.step)))
  return found
}

/** The step nearest to a wanted setting, then the one on its other side; always at least the present setting. */
function stepsNear({ adjuster, base }: Axis, wanted: number): readonly number[] {
  if (adjuster.kind === 'wedge') return wedgesNear(adjuster, base, wanted)
  const [low, high] = adjuster.range
  const room = adjuster.step * 1e-6
  const inRange = (k: number) => {
    const setting = base + k * adjuster.step
    if (setting < low - room || setting > high + room) return false
    return adjuster.kind !== 'shims' || k === 0 || shimChange(adjuster, k * adjuster.step) !== null
  }
  const at = (wanted - base) / adjuster.step
  const found: number[] = []
  for (const way of [-1, 1])
    for (
      let k = way < 0 ? Math.floor(at + 1e-9) : Math.ceil(at - 1e-9), tries = 0;
      tries < 50;
      k += way, tries++
    )
      if (inRange(k)) {
        found.push(k)
        break
      }
  const sorted = [...new Set(found.length ? found : [0])].sort((a, b) => Math.abs(a - at) - Math.abs(b - at))
  return sorted.map((k) => (k === 0 ? base : Math.min(high, Math.max(low, base + k * adjuster.step))))
}

/** The wedges (or none, or what is in) nearest to a wanted angle, on either side of it. */
function wedgesNear({ sizes, range, step }: Wedge, base: number, wanted: number): readonly number[] {
  const room = step * 1e-6
  const all = [...new Set([base, 0, ...sizes, ...sizes.map((size) => -size)])].filter(
    (angle) => angle === base || (angle >= range[0] - room && angle <= range[1] + room),
  )
  const near = (list: readonly number[]) =>
    list.toSorted((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted)).slice(0, 1)
  return [...near(all.filter((a) => a <= wanted)), ...near(all.filter((a) => a > wanted))].sort(
    (a, b) => Math.abs(a - wanted) - Math.abs(b - wanted),
  )
}
