import type { Corner } from '../corner/index.ts'
import type { PlayFact } from '../job/index.ts'
import type { Kit } from '../kit/index.ts'
import type { Measured } from '../measure/index.ts'
import { propagate } from '../measure/index.ts'
import { formatLength, metre, Refusal } from '../quantity/index.ts'
import {
  type InspectionSubject,
  inspectionLimits,
  inspectionLimitsFor,
  type Jurisdiction,
} from '../spec/index.ts'
import type { HeldLimit } from './held-limit.ts'

/**
 * The public inspection rules that speak of a play, where the kit says whose rules apply: play of the steering at the
 * tread, of a wheel bearing at the sidewall, or a rule in words for a ball joint.
 *
 * @source each line's own source and clause: docs/methods/inspection-limits.md
 */
export function publicWearLimits({
  corner,
  fact,
  swing,
  kit,
}: {
  readonly corner: Corner
  readonly fact: PlayFact
  readonly swing: Measured
  readonly kit: Kit | null
}): readonly HeldLimit[] {
  const jurisdiction = known(kit?.thresholds?.jurisdiction)
  const subject = subjectOf(corner, fact)
  if (jurisdiction === null || subject === null) return []
  const steering = Object.values(corner.parts).some(({ kind }) => kind === 'rack')
    ? 'rack'
    : Object.values(corner.parts).some(({ kind }) => kind === 'steering box')
      ? 'box'
      : undefined
  // Read at the tread or the sidewall, the same looseness swings about as far as the tyre is high.
  const atTyre = propagate(([s]) => (s! / fact.observation.arm) * corner.wheel.loadedRadius, [swing])
  try {
    return inspectionLimitsFor({
      jurisdiction,
      subject,
      weight: 'up to 10 000 lb',
      steering,
      rim: corner.wheel.rim === undefined ? undefined : metre(corner.wheel.rim),
    }).flatMap(({ limit, named }): HeldLimit[] => {
      const { value } = limit
      const common = {
        what: `${limit.subject}, ${limit.measured}${limit.vehicles ? `; ${limit.vehicles}` : ''}`,
        whose: 'the inspection' as const,
        jurisdiction: limit.jurisdiction,
        source: `${limit.source}, ${limit.clause}${named ? '' : ' (no line for this rim: the stricter one)'}`,
        of: subject === 'ball joints' ? swing : atTyre,
      }
      if (value.kind === 'at most')
        return [
          { ...common, limit: value.length, text: formatLength(value.length, { unit: 'in', digits: 3 }) },
        ]
      return value.kind === 'condition' ? [{ ...common, limit: null, text: value.rule }] : []
    })
  } catch (refusal) {
    if (refusal instanceof Refusal) return []
    throw refusal
  }
}

/** A jurisdiction of which rules are held, as the kit names it. */
const known = (text: string | undefined): Jurisdiction | null =>
  inspectionLimits.find(({ jurisdiction }) => jurisdiction === text?.trim())?.jurisdiction ?? null

/** What the rules call the looseness of a joint. */
function subjectOf(corner: Corner, { joint, observation }: PlayFact): InspectionSubject | null {
  const model = corner.joints[joint]
  if (!model) return null
  const kinds = model.joins.map((part) => corner.parts[part]?.kind)
  if (kinds.includes('hub') && model.kind !== 'wheel nuts') return 'wheel bearing play at the sidewall'
  if (observation.moves === 'toe' && (kinds.includes('rod') || kinds.includes('rack')))
    return 'steering linkage play at the tread'
  return model.kind.startsWith('tapered stud') || model.kind === 'pinch bolt' ? 'ball joints' : null
}
