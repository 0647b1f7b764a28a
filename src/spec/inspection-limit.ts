import type { Metre } from '../quantity/index.ts'

/** Whose inspection rules are held here; ISO 3166 codes, and EU for the directive. @source ISO 3166-1, ISO 3166-2 */
export type Jurisdiction = 'US' | 'US-MD' | 'US-MO' | 'US-NC' | 'CA-QC' | 'EU'

/** What an inspection limit is about. @source definition */
export type InspectionSubject =
  | 'steering-wheel free movement'
  | 'steering linkage play at the tread'
  | 'wheel bearing play at the sidewall'
  | 'ball joints'
  | 'toe'
  | 'rim run-out'
  | 'wheel mounting'
  | 'suspension condition'
  | 'steering condition'

/**
 * What a rule demands: a length not to be passed, a share of the steering wheel's diameter, a multiple of the
 * maker's own value, or a condition in words.
 *
 * @source definition
 */
export type InspectionValue =
  | { readonly kind: 'at most'; readonly length: Metre }
  | { readonly kind: 'share of the steering wheel'; readonly share: number }
  | { readonly kind: 'times the maker’s value'; readonly factor: number }
  | { readonly kind: 'condition'; readonly rule: string }

/** The diameters that a line of a rule is printed for, both ends within; null where it has no end. @source definition */
export interface DiameterRange {
  readonly of: 'steering wheel' | 'rim'
  readonly from: Metre | null
  /** True where the line begins only above `from`. */
  readonly fromExcluded?: boolean
  readonly to: Metre | null
  /** True where the line ends just below `to`. */
  readonly toExcluded?: boolean
}

/** One line of a public inspection rule. @source definition */
export interface InspectionLimit {
  readonly id: string
  readonly jurisdiction: Jurisdiction
  readonly subject: InspectionSubject
  readonly value: InspectionValue
  /** Which vehicles, in the rule's own measure; null where it does not say. */
  readonly vehicles: string | null
  /** Gross weight the line is for; null where it does not say. */
  readonly weight: 'up to 10 000 lb' | 'over 10 000 lb' | null
  /** Rack or box; null where the rule makes no difference. */
  readonly steering: 'rack' | 'box' | null
  readonly diameter: DiameterRange | null
  /** How and where it is measured, as far as the rule says. */
  readonly measured: string
  readonly source: string
  readonly clause: string
  readonly basis: 'read in a public copy' | 'from memory'
}
