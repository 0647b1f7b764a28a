import type { PastResponse } from '../adjust/index.ts'
import type { Corner } from '../corner/index.ts'
import type { Job } from '../job/index.ts'
import type { Kit } from '../kit/index.ts'
import type { AxleEnd } from '../linkage/index.ts'
import type { UnitChoice } from '../quantity/index.ts'
import type { Spec } from '../spec/index.ts'

/** Everything a sheet is made from: the log, and the models that it names. @source definition */
export interface SheetSources {
  readonly job: Job
  readonly corners: { readonly front: Corner; readonly rear: Corner | null }
  readonly spec: Spec | null
  readonly kit: Kit | null
  /** What moves did in other jobs (`responsesOf`); what this job itself has taught is left out. */
  readonly learned?: readonly PastResponse[]
}

/** How a sheet is made. @source definition */
export interface SheetOptions {
  /** Probability that counts as proven. Default: the workshop's, from spec sheet or kit, else 0.95. */
  readonly threshold?: number
  /** Seed of the draws. Default 1; the same sources and seed give the same sheet. */
  readonly seed?: number
  /** Units of the person who reads it. Default metric. */
  readonly units?: UnitChoice
  /** The day of the work for calibrations, "2026-11-25". Default: that of the last entry that has one. */
  readonly today?: string
}

/** The corner model at one end of the vehicle, where the job names one. */
export const cornerAt = (sources: SheetSources, end: AxleEnd): Corner | null => sources.corners[end]
