import type { Measured } from '../../measure/index.ts'
import type { Corner } from '../corner-schema.ts'
import type { CornerMeasurement } from './observable.ts'
import type { FitPrior } from './prior-of.ts'
import type { Unknowns, Way } from './unknowns.ts'

/** A measurement against the fitted corner. @source definition */
export interface FitResidual {
  readonly measurement: CornerMeasurement
  /** What the fitted corner gives there. */
  readonly fitted: number
  /** Measured minus fitted. */
  readonly off: number
  /** How far it lies from what all others say of it, over the standard uncertainty of that; of one that was left out, too. */
  readonly score: number
  /** The smallest error of it that would be found four times in five; infinite when nothing else checks it. */
  readonly foundFrom: number
  /** False when it was left out as a gross error. */
  readonly used: boolean
}

/** One reading that cannot be right. @source definition */
export interface GrossError {
  /** Its place among the measurements. */
  readonly index: number
  /** How far it is off, from all the others: measured minus true. */
  readonly size: Measured
  /** Others that would explain the misfit nearly as well: measure them again, too. */
  readonly orElse: readonly number[]
  readonly sentence: string
}

/** A point whose place is hardly better known than before. @source definition */
export interface Undetermined {
  /** By the file's name. */
  readonly point: string
  readonly ways: readonly Way[]
  /** Largest standard uncertainty left along these ways, m. */
  readonly spread: number
  readonly sentence: string
}

/** A corner model fitted to what was measured. @source definition */
export interface FittedCorner {
  /** Points, camber and toe as fitted; the spread of a point is the largest of its three coordinates. */
  readonly corner: Corner
  readonly unknowns: Unknowns
  readonly values: readonly number[]
  /** Of all unknowns, in their order. */
  readonly covariance: readonly (readonly number[])[]
  readonly prior: FitPrior
  readonly residuals: readonly FitResidual[]
  readonly grossError: GrossError | null
  /** Further measurements that do not fit, when one was left out already: nothing is decided then. */
  readonly alsoDoubtful: readonly number[]
  readonly undetermined: readonly Undetermined[]
  /** Independent directions of the prior, and those whose spread shrank by less than a tenth. */
  readonly directions: { readonly all: number; readonly open: number }
}
