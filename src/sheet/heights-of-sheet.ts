import type { HeightFact, JobState, Round } from '../job/index.ts'
import { wheelNames, wheelPlace } from '../job/index.ts'
import type { AxleEnd } from '../linkage/index.ts'
import { combine, decide, type Measured } from '../measure/index.ts'
import { formatLength, type UnitChoice } from '../quantity/index.ts'
import type { Spec } from '../spec/index.ts'
import type { Sheet } from './sheet.ts'
import { sheetNumber } from './sheet-number.ts'
import { heightIn } from './wheel-setups.ts'

/** Ride heights against the sheet, and what must be settled before any angle is blamed. */
export function sheetHeights(task: {
  readonly state: JobState
  readonly round: Round | null
  readonly spec: Spec | null
  readonly units: UnitChoice
  readonly threshold: number
  readonly measured: (fact: HeightFact) => Measured
}): { readonly rows: Sheet['heights']; readonly says: readonly string[] } {
  const { state, round, spec, units, threshold, measured } = task
  const length = { kind: 'length', unit: units.length } as const
  const found = wheelNames.flatMap((wheel) => {
    const fact = heightIn(state, round, wheel)
    return fact ? [{ wheel, fact, value: measured(fact) }] : []
  })
  const rows = found.map(({ wheel, fact, value }): Sheet['heights'][number] => {
    const { axle, side } = wheelPlace(wheel)
    const limit = spec?.rideHeight?.[axle]
    const decision = limit
      ? decide(value, { low: limit.low.value, high: limit.high.value }, { threshold })
      : null
    return {
      wheel: `${side} ${axle}`,
      number: sheetNumber(value, length),
      verdict: decision?.verdict ?? 'no limit',
      limitText: limit ? `${limit.low.text} … ${limit.high.text}, ${fact.when}` : fact.when,
      inputs: fact.typings.map(({ entry, path, text }, i) => ({
        entry,
        path,
        label: `rule${i > 0 ? `, ${i + 1}` : ''}`,
        text,
      })),
    }
  })
  const says = (['front', 'rear'] as const).flatMap((axle: AxleEnd) => {
    const most = spec?.rideHeight?.[axle]?.maxSideDifference
    const [left, right] = (['left', 'right'] as const).map((side) =>
      found.find((f) => f.wheel === `${axle} ${side}`),
    )
    if (!most || !left || !right) return []
    const difference = combine([
      { of: left.value, times: 1 },
      { of: right.value, times: -1 },
    ])
    if (Math.abs(difference.value) <= most.value) return []
    const by = formatLength(Math.abs(difference.value) as never, { unit: units.length, digits: 0 })
    return [
      `The ${axle} stands ${by} lower on the ${difference.value > 0 ? 'right' : 'left'} than on the other side; the sheet allows ${most.text}. Settle the ride height before any angle is blamed: it alters every one of them, toe most.`,
    ]
  })
  return { rows, says }
}
