import { type Metre, metre, type Radian, rad } from '../quantity/index.ts'
import type { InspectionLimit } from './inspection-limit.ts'
import { specRefusal } from './spec-refusal.ts'

/**
 * The free movement that a line allows at a steering wheel, as a length along its rim and as the angle that
 * the wheel turns.
 *
 *     length = share · D        angle = length / (D / 2)
 *
 * @param limit a line with a length or a share of the steering wheel
 * @param steeringWheel its diameter D, m, > 0
 * @returns m along the rim, and rad
 * @throws {Refusal} `needs-diameter` if D is not above zero; `not-a-number-of-this-rule` for a line without a length
 * @source own derivation: docs/methods/inspection-limits.md
 * @example inDegrees(inspectionLength(inspectionLimits[0], mm(380)).angle) // 15.319
 */
export function inspectionLength(
  limit: InspectionLimit,
  steeringWheel: Metre,
): { readonly length: Metre; readonly angle: Radian } {
  if (!(steeringWheel > 0 && Number.isFinite(steeringWheel)))
    throw specRefusal({
      code: 'needs-diameter',
      at: 'steeringWheel',
      given: String(steeringWheel),
      sentence: 'The diameter of the steering wheel is not above zero.',
      remedy: 'Measure the steering wheel across its middle.',
    })
  const { value } = limit
  if (value.kind !== 'at most' && value.kind !== 'share of the steering wheel')
    throw specRefusal({
      code: 'not-a-number-of-this-rule',
      at: limit.id,
      given: value.kind,
      sentence: `The rule ${limit.source} has no length here.`,
      remedy: 'Judge it as the rule says it in words.',
    })
  const length = value.kind === 'at most' ? value.length : value.share * steeringWheel
  return { length: metre(length), angle: rad(length / (steeringWheel / 2)) }
}
