import { formatMass, kilogram, type MassUnit } from '../quantity/index.ts'

/** What must be said where bush bolts are made final. @source definition */
export interface Caution {
  readonly code:
    | 'jack alone'
    | 'jack lifts body'
    | 'anti-roll bar'
    | 'hanging'
    | 'adjuster'
    | 'air spring'
    | 'maker'
  readonly sentence: string
}

/** What the cautions depend on. @source definition */
export interface CautionFacts {
  /** Load of the corner on its wheel, N; null when nobody knows. */
  readonly cornerLoad: number | null
  readonly hasAdjuster: boolean
  readonly hasBonded: boolean
  readonly airSprung: boolean
  /** In which unit a load is told. Default: kg. */
  readonly mass?: MassUnit
}

const kilogramForce = 9.80665
/** No more than the nearest ten is meant. */
const tens = -1

/**
 * The cautions of the clamp pose, worst first. They may be acknowledged, not hidden.
 *
 * @source common practice, no source
 */
export function cautionsOf({
  cornerLoad,
  hasAdjuster,
  hasBonded,
  airSprung,
  mass = 'kg',
}: CautionFacts): readonly Caution[] {
  const load =
    cornerLoad === null
      ? ''
      : ` (about ${formatMass(kilogram(cornerLoad / kilogramForce), { unit: mass, digits: tens })} here)`
  const all: (Caution | null)[] = [
    {
      code: 'jack alone',
      sentence:
        'Never under the vehicle on a jack alone: body on stands, each seen loaded, before the arm is raised.',
    },
    {
      code: 'jack lifts body',
      sentence: `At ride height with the spring in, a jack under the arm carries nearly the whole corner${load} and can lift the body off its stand: better on its wheels, on ramps or blocks. Else the stand stays fitted, its gap is watched, and nobody is under the vehicle.`,
    },
    {
      code: 'anti-roll bar',
      sentence:
        'Anti-roll link off, or both sides raised alike: else the bar pulls the arm away from its height.',
    },
    airSprung
      ? {
          code: 'air spring',
          sentence: 'Air springs: levelling switched off before lifting; the vehicle may move by itself.',
        }
      : null,
    hasBonded
      ? {
          code: 'hanging',
          sentence:
            'A bonded bush made final hanging stays twisted, wears early and holds the height off: run it up only, final at ride height.',
        }
      : null,
    hasAdjuster
      ? {
          code: 'adjuster',
          sentence:
            'A bolt that carries an eccentric is nipped up for readings and final only after the last move, at ride height.',
        }
      : null,
    {
      code: 'maker',
      sentence:
        "The maker's service information says which joints are final in which position; it stands above this.",
    },
  ]
  return all.filter((one) => one !== null)
}
