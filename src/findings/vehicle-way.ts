import type { AxleEnd } from '../linkage/index.ts'
import type { AxleWay } from './axle-model.ts'
import type { ExaminedWheel } from './findings-problem.ts'

/** One way in which a vehicle, or the way it is read, may differ from what is taken, per unit of it (m or rad). */
export interface VehicleWay {
  readonly axles?: Partial<Readonly<Record<AxleEnd, AxleWay>>>
  /** Spring shorter: the body comes down there, m. */
  readonly springs?: Partial<Readonly<Record<ExaminedWheel, number>>>
  /** Pads higher than the others, m. */
  readonly pads?: Partial<Readonly<Record<ExaminedWheel, number>>>
  /** Added to every camber that is read. */
  readonly camberGauge?: number
  /** Steer gauge off straight ahead, to the left. */
  readonly steerGauge?: number
  /** Play of joints: by wheel and joint, m of swing. */
  readonly play?: Readonly<Record<string, number>>
}
