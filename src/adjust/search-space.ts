import type { AnyCornerPoints, AxleEnd } from '../linkage/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { ActsOn, Adjuster, AdjustRefusal } from './adjuster.ts'
import { angleOrder } from './angles-at-strokes.ts'
import type { Axis } from './axis.ts'
import { checkAdjuster } from './check-adjuster.ts'
import { checkOnAxle } from './check-on-axle.ts'
import type { FaultKind } from './fault-kinds.ts'
import { inputCount, putInputs } from './inputs-of.ts'
import type { Job } from './job-of.ts'
import { jobOfAxis } from './job-of-axis.ts'
import type { LearnedResponse } from './learned-response.ts'
import { misplaced } from './misplaced.ts'
import type { AdjusterSet, AxleSetup, MovesProblem } from './problem.ts'
import type { ReadingRow } from './reading-rows.ts'
import { type ResponseGroup, responseGroups } from './response-group.ts'
import { strokeMeant } from './stroke-meant.ts'
import { strokeOf } from './stroke-of.ts'

/** How a wheel is held, as far as faults go by it. */
type WheelLayout = AnyCornerPoints['layout'] | 'solid axle' | 'twist beam'

/** One wheel of a problem, 2 · axle + (0 left, 1 right). */
export interface SpaceWheel {
  readonly layout: WheelLayout
  readonly adjusters: readonly Adjuster[]
  readonly response: LearnedResponse | null
}

/** All wheels of a problem with their response, and all adjusters as axes. */
export interface SearchSpace {
  /** Front or rear, in the problem's order of axles. */
  readonly ends: readonly AxleEnd[]
  readonly wheels: readonly SpaceWheel[]
  readonly groups: readonly ResponseGroup[]
  /** The group of each wheel. */
  readonly groupOf: readonly ResponseGroup[]
  readonly axes: readonly Axis[]
  /** What each axis is there for. */
  readonly jobs: readonly Job[]
  /** How many inputs all axes have together. */
  readonly inputs: number
  readonly rows: readonly ReadingRow[]
  /** Numbers that a look at the response needs while it lasts; nothing in them is kept. */
  readonly room: { readonly inputs: Float64Array; readonly shifts: Float64Array; readonly by: Float64Array }
  /** Whether an axis moves a row at all, [row · axes + axis]. */
  readonly touches: Uint8Array
  /** Kinds of fault that are not to be named. */
  readonly unlikely: readonly FaultKind[]
}

/**
 * Lays out the search: checks the adjusters, finds the present strokes and takes each wheel's response there.
 *
 * @throws {Refusal} `bad-adjuster`; `repeated-id` for two adjusters of one set with one id; `setting-out-of-range`;
 *   `no-such-point`; `wrong-place` for an adjuster that sits at one wheel but acts on both, or the other way round
 * @source own derivation: docs/methods/moves.md
 */
export function searchSpace(problem: MovesProblem, rows: readonly ReadingRow[]): SearchSpace {
  const axes: Axis[] = []
  let inputs = 0
  problem.axles.forEach((setup, axle) => {
    for (const on of ['left', 'right', 'both'] as const) {
      const set = setup[on]
      set?.adjusters.forEach((adjuster, column) => {
        checkAdjuster(adjuster)
        checkId(set.adjusters, column)
        checkPlace(setup, adjuster, on)
        axes.push(axisOf(adjuster, set, { axle, on, column, input: inputs }))
        inputs += inputCount(adjuster)
      })
    }
  })
  const now = new Float64Array(inputs)
  for (const { adjuster, baseStroke, input } of axes) putInputs(adjuster, baseStroke, now, input)
  const groups = problem.axles.flatMap((setup, axle) => responseGroups(setup, axle, axes, now))
  return {
    ends: problem.axles.map((setup) => setup.end),
    wheels: problem.axles.flatMap((setup) =>
      (['left', 'right'] as const).map((side) => wheelOf(setup, side)),
    ),
    axes,
    inputs,
    rows,
    groups,
    groupOf: groups.flatMap((group) =>
      Array.from({ length: group.surface.value.length / angleOrder.length }, () => group),
    ),
    room: {
      inputs: new Float64Array(inputs),
      shifts: new Float64Array(2 * problem.axles.length * angleOrder.length),
      by: new Float64Array(inputs),
    },
    jobs: axes.map((_, j) => jobOfAxis({ axes, groups }, j)),
    touches: touchesOf({ axes, rows, groups }),
    unlikely: problem.unlikely ?? [],
  }
}

/** A sleeve that stands at the top of its circle has no slope there, so its inputs are asked. */
function touchesOf({ axes, rows, groups }: Pick<SearchSpace, 'axes' | 'rows' | 'groups'>): Uint8Array {
  const touches = new Uint8Array(rows.length * axes.length)
  rows.forEach(({ terms }, i) => {
    for (const { wheel, angle } of terms)
      for (const group of groups) {
        const a = (wheel - group.wheel) * angleOrder.length + angle
        if (a < 0 || a >= group.surface.value.length) continue
        const n = group.inputs.length
        for (const j of group.axes) {
          const k = group.inputs.indexOf(axes[j]!.input)
          for (let c = 0; c < inputCount(axes[j]!.adjuster); c++)
            if (group.surface.slope[a * n + k + c] !== 0 || group.taught[a * n + k + c] !== 0)
              touches[i * axes.length + j] = 1
        }
      }
  })
  return touches
}

function checkId(adjusters: readonly Adjuster[], column: number): void {
  const { id } = adjusters[column]!
  if (adjusters.findIndex((other) => other.id === id) < column)
    throw new Refusal<AdjustRefusal>({
      code: 'repeated-id',
      at: id,
      sentence: `Two adjusters of one wheel are both called "${id}".`,
      remedy: 'Give each adjuster of a corner its own id.',
    })
}

function checkPlace(setup: AxleSetup, adjuster: Adjuster, on: ActsOn): void {
  if ('axle' in setup) checkOnAxle(adjuster, on, setup.axle)
  else if ((adjuster.kind === 'sub-frame shift') !== (on === 'both')) throw misplaced(adjuster, on === 'both')
}

function axisOf(
  adjuster: Adjuster,
  { settings }: AdjusterSet,
  place: Pick<Axis, 'axle' | 'on' | 'column' | 'input'>,
): Axis {
  const given = settings[adjuster.id]
  const known = given !== null && given !== undefined
  const base = known ? given : (adjuster.range[0] + adjuster.range[1]) / 2
  const ends = adjuster.range.map((end) => strokeMeant({ adjuster, known, base }, end))
  return {
    ...place,
    adjuster,
    known,
    base,
    baseStroke: strokeOf(adjuster, base),
    low: Math.min(...ends),
    high: Math.max(...ends),
  }
}

function wheelOf(setup: AxleSetup, side: 'left' | 'right'): SpaceWheel {
  const adjusters = [...setup[side].adjusters, ...(setup.both?.adjusters ?? [])]
  if (!('axle' in setup))
    return { layout: setup[side].points.layout, adjusters, response: setup[side].response ?? null }
  return { layout: 'location' in setup.axle ? 'solid axle' : 'twist beam', adjusters, response: null }
}
