import { type FindingsProblem, wearAnswers } from '../findings/index.ts'
import type { JobState } from '../job/index.ts'
import { formatAngle, formatPercent, rad, type UnitChoice } from '../quantity/index.ts'
import type { FindingsWear } from './findings-sheet.ts'
import type { SheetSources } from './sources.ts'
import { sheetWear } from './wear-of-sheet.ts'

/**
 * Of each play among the evidence: whether it passes, by whose rule; and whether the wheel can hold an alignment.
 *
 * @source own derivation: docs/methods/findings.md, docs/methods/inspection-limits.md
 */
export function findingsWear(
  sources: SheetSources,
  state: JobState,
  problem: FindingsProblem,
  { units, threshold }: { readonly units: UnitChoice; readonly threshold: number },
): readonly FindingsWear[] {
  const { rows } = sheetWear(sources, state, { units, threshold })
  return wearAnswers(problem).map(({ wheel, joint, holds, worst }, i) => {
    const { value } = problem.play[i]!.swing
    const row = rows.find(
      (one) => one.wheel === wheel && one.joint === joint && Math.abs(one.play.value - value) < 1e-9,
    )
    const by = row?.limits[0]
    const whose = by
      ? ` Judged by ${by.whose === 'not said' ? 'a limit' : `a limit of ${by.whose}:`} ${by.text}${by.jurisdiction ? `, ${by.jurisdiction}` : ''} (${by.source || 'source not said'}).`
      : ''
    const verdict = row?.verdict ?? 'no limit'
    const swing = worst
      ? `${worst.angle} swings by ${formatAngle(rad(worst.swing), { unit: units.angle, digits: 2 })} through it, ${formatPercent(worst.share, { digits: 0 })} of what its limits leave`
      : ''
    return {
      joint: `${row?.name ?? joint.replaceAll('-', ' ')}, ${wheel}`,
      play: row ? `${row.play.text} ${row.play.spread}` : '',
      passes:
        verdict === 'no limit'
          ? 'Passes: cannot be said. No limit is typed for it, and none is made up here.'
          : `Passes: ${{ inside: 'yes', outside: 'no', 'inside, not proven': 'likely, not proven', 'outside, not proven': 'likely not, not proven' }[verdict]}.${whose}`,
      holds:
        holds === null
          ? 'Holds an alignment: cannot be said, no angle with limits depends on it here.'
          : `Holds an alignment: ${holds ? 'yes' : 'no'}; ${swing}.`,
    }
  })
}
