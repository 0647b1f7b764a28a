import type { Limits, Measured } from '../measure/index.ts'
import { decide, rectangular } from '../measure/index.ts'
import { type Metre, metre, Refusal } from '../quantity/index.ts'
import type { ClampRefusal } from './clamp-refusal.ts'

/** Heights are hub centre to arch edge, the same points each time. @source definition */
export interface HeightsKnown {
  /** What is done to the springs of this axle. */
  readonly springs: 'stay' | 'renewed' | 'torsion bar reset'
  /** As measured on its wheels before lifting; null when nobody did. */
  readonly before: Measured | null
  /** What the workshop typed from its own information; null when it has none. */
  readonly sheet: { readonly low: Metre; readonly high: Metre; readonly preferred?: Metre } | null
}

/** The height at which bush bolts are made final. @source definition */
export interface ClampTarget {
  /** Hub to arch; null: no height can be aimed at, the bolts stay run up until it stands settled on its wheels. */
  readonly height: Measured | null
  readonly by: 'before lifting' | 'sheet' | 'settled on its wheels'
  readonly why: string
}

/**
 * Which height to aim at. Springs that stay, and a height inside the sheet's: the one measured before
 * lifting. Springs renewed or a torsion bar reset: the sheet's, anywhere in its range. Else the bolts stay run
 * up until the vehicle has settled.
 *
 * @throws {Refusal} `not-finite` when the sheet's range is empty or not finite
 * @source common practice, no source
 * @example clampTarget({ springs: 'stay', before: exact(0.44), sheet: null }).by // 'before lifting'
 */
export function clampTarget({ springs, before, sheet }: HeightsKnown): ClampTarget {
  if (sheet && !(Number.isFinite(sheet.low) && Number.isFinite(sheet.high) && sheet.low < sheet.high))
    throw new Refusal<ClampRefusal>({
      code: 'not-finite',
      at: 'sheet',
      given: `${sheet.low} … ${sheet.high}`,
      sentence: 'The ride height of the sheet has no room between its lowest and highest.',
      remedy: 'Type the ride height again from your service information, lowest and highest.',
    })
  if (springs !== 'stay') {
    const what = springs === 'renewed' ? 'The springs are renewed' : 'The torsion bar is reset'
    return sheet
      ? {
          height: middleOf(sheet),
          by: 'sheet',
          why: `${what}: the sheet's height counts, not the one before.`,
        }
      : settled(`${what} and the sheet gives no height.`)
  }
  if (!before) return settled('Nobody measured the height before lifting.')
  if (!sheet)
    return {
      height: before,
      by: 'before lifting',
      why: 'The springs stay: the height measured before lifting counts. No sheet to hold it against.',
    }
  const limits: Limits = { low: sheet.low, high: sheet.high }
  const { verdict } = decide(before, limits)
  return verdict === 'inside' || verdict === 'inside, not proven'
    ? {
        height: before,
        by: 'before lifting',
        why: `The springs stay and the height is ${verdict}: the one measured before lifting counts.`,
      }
    : settled(`The height before lifting is ${verdict} the sheet's range: settle that first.`)
}

function middleOf({ low, high, preferred }: { low: Metre; high: Metre; preferred?: Metre }): Measured {
  return rectangular(
    (high - low) / 2,
    'where it settles in the range of the sheet',
    preferred ?? metre((low + high) / 2),
  )
}

const settled = (reason: string): ClampTarget => ({
  height: null,
  by: 'settled on its wheels',
  why: `${reason} The bush bolts stay run up until the vehicle has settled on its wheels.`,
})
