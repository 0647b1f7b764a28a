import type { AxleEnd, Side, WheelAngle } from '../linkage/index.ts'
import { decide, type Verdict } from '../measure/index.ts'
import { familiesOf } from './families-of.ts'
import type { ExaminedWheel, FindingsProblem } from './findings-problem.ts'
import { knobsOf } from './knobs.ts'
import { rowMaker } from './row-maker.ts'
import { vehicleModel } from './vehicle-model.ts'
import { fourWheels, playName } from './vehicle-vector.ts'

/** What the play of one joint means: two answers that need not agree. @source definition */
export interface WearAnswer {
  readonly wheel: ExaminedWheel
  readonly joint: string
  /** Against the limit that was typed or that a public rule gives; null where there is none. */
  readonly passes: Verdict | null
  /** Whether the wheel can hold an alignment: no angle swings by more than a quarter of its limits' width; null where no limit or no model says. */
  readonly holds: boolean | null
  /** The angle that swings most of its limits' width, by how much it swings (rad), and what share of the width that is. */
  readonly worst: { readonly angle: WheelAngle; readonly swing: number; readonly share: number } | null
}

/** Of the width of the limits: more than this, and what was set will not be found again. @source own choice */
const shareThatHolds = 0.25

/**
 * Passes the law, and can hold an alignment: the play of each joint judged both ways. Play that an inspection lets pass
 * may be more toe than its limits are wide.
 *
 * @throws {Refusal} what the linkage says where an axle cannot stand so; `setting-out-of-range`; `no-such-point`
 * @source own derivation: docs/methods/findings.md
 */
export function wearAnswers(problem: FindingsProblem): readonly WearAnswer[] {
  if (problem.play.length === 0) return []
  const knobs = problem.axles.flatMap(knobsOf)
  const travel = Object.fromEntries(
    fourWheels.map((wheel) => [wheel, problem.heights[wheel]?.value ?? 0]),
  ) as Record<ExaminedWheel, number>
  const plays = problem.play.map(({ wheel, joint }) => playName(wheel, joint))
  const now = vehicleModel(problem.axles, knobs, { travel, turns: false, plays })
  const rowOf = rowMaker(problem, now.numbers)
  const families = familiesOf(problem, knobs)
  return problem.play.map(({ wheel, joint, swing, limit }): WearAnswer => {
    const passes = limit === null ? null : decide(swing, { high: limit }).verdict
    const family = families.find(({ main }) => main.play?.[playName(wheel, joint)] !== undefined)
    if (!family) return { wheel, joint, passes, holds: null, worst: null }
    const rate = now.rate(family.main)
    const per = swing.value / family.main.play![playName(wheel, joint)]!
    const [end, side] = wheel.split(' ') as [AxleEnd, Side]
    const swings = (['camber', 'caster', 'sai', 'toe'] as const).flatMap((angle) => {
      const [of, bounds] = [
        rowOf.reading(`${end} ${side} ${angle}`),
        problem.limits[`${end} ${side} ${angle}`],
      ]
      if (!of || !bounds || !Number.isFinite(bounds.high - bounds.low)) return []
      const turned = Math.abs(of.reduce((sum, x, i) => sum + x * rate[i]! * per, 0))
      return [{ angle, swing: turned, share: turned / (bounds.high - bounds.low) }]
    })
    const worst = swings.reduce<WearAnswer['worst']>((a, b) => (a && a.share >= b.share ? a : b), null)
    return { wheel, joint, passes, holds: worst ? worst.share <= shareThatHolds : null, worst }
  })
}
