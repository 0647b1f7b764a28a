import type { Metre } from '../quantity/index.ts'
import type { DiameterRange, InspectionLimit, InspectionSubject, Jurisdiction } from './inspection-limit.ts'
import { inspectionLimits } from './inspection-limits.ts'
import { specRefusal } from './spec-refusal.ts'

/** Which lines are wanted; what is left out does not narrow them. @source definition */
export interface InspectionQuestion {
  readonly jurisdiction: Jurisdiction
  readonly subject?: InspectionSubject | undefined
  readonly weight?: 'up to 10 000 lb' | 'over 10 000 lb' | undefined
  readonly steering?: 'rack' | 'box' | undefined
  /** Of the steering wheel, m. */
  readonly steeringWheel?: Metre | undefined
  /** Of the rim or bead seat, m. */
  readonly rim?: Metre | undefined
}

/** A line, and whether its rule names this diameter. @source definition */
export interface InspectionAnswer {
  readonly limit: InspectionLimit
  /** False where the rule has no line for this diameter and the next smaller one, which is the stricter, stands in. */
  readonly named: boolean
}

/** A diameter read with a rule is the printed one within this much, m: half a graduation either way. */
const SAME = 0.0005

/**
 * The lines of a jurisdiction's public inspection rules that fit a vehicle. A rule whose table has no line for
 * the diameter is answered by its next smaller line, and says so.
 *
 * @param question diameters in m
 * @returns in the order of the table; empty where the jurisdiction has no such rule here
 * @throws {Refusal} `unknown-jurisdiction`; `out-of-range` for a diameter not above zero
 * @assumes a public limit bounds what may be on the road; the maker's limit may be far smaller
 * @source each line's own `source` and `clause`; own derivation: docs/methods/inspection-limits.md
 * @example inspectionLimitsFor({ jurisdiction: 'US', subject: 'steering-wheel free movement', steeringWheel: inch(18) }).length // 1
 */
export function inspectionLimitsFor(question: InspectionQuestion): readonly InspectionAnswer[] {
  const ofPlace = inspectionLimits.filter((limit) => limit.jurisdiction === question.jurisdiction)
  if (ofPlace.length === 0)
    throw specRefusal({
      code: 'unknown-jurisdiction',
      at: 'jurisdiction',
      given: question.jurisdiction,
      sentence: `No public inspection limits of “${question.jurisdiction}” are held here.`,
      remedy: 'Ask the local inspection office and type its limits into the spec sheet, with their source.',
    })
  for (const at of ['steeringWheel', 'rim'] as const) {
    const given = question[at]
    if (given !== undefined && !(given > 0 && Number.isFinite(given)))
      throw specRefusal({
        code: 'out-of-range',
        at,
        given: String(given),
        sentence: 'The diameter is not above zero.',
        remedy: 'Measure it across the middle.',
      })
  }
  const fits = ofPlace.filter(
    (limit) =>
      (question.subject === undefined || limit.subject === question.subject) &&
      (question.weight === undefined || limit.weight === null || limit.weight === question.weight) &&
      (question.steering === undefined || limit.steering === null || limit.steering === question.steering),
  )
  return fits.flatMap((limit): InspectionAnswer[] => {
    const given = limit.diameter?.of === 'rim' ? question.rim : question.steeringWheel
    if (limit.diameter === null || given === undefined) return [{ limit, named: true }]
    if (holds(limit.diameter, given)) return [{ limit, named: true }]
    const table = fits.filter(
      (other) =>
        other.diameter?.of === limit.diameter?.of &&
        other.source === limit.source &&
        other.clause === limit.clause,
    )
    if (table.some((other) => holds(other.diameter!, given))) return []
    const below = table.filter((other) => (other.diameter!.to ?? Number.POSITIVE_INFINITY) < given)
    return below.at(-1) === limit ? [{ limit, named: false }] : []
  })
}

function holds({ from, fromExcluded, to, toExcluded }: DiameterRange, given: number): boolean {
  const above = from === null || (fromExcluded ? given > from + SAME : given >= from - SAME)
  const below = to === null || (toExcluded ? given < to - SAME : given <= to + SAME)
  return above && below
}
