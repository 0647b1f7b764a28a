import type { Displacement, Point, Side } from '../linkage/index.ts'

/** What may be different about an axle that is one body, per unit. In vehicle axes. */
export interface WholeWay {
  readonly tieRod?: number
  readonly dragLink?: number
  readonly links?: readonly [number, number, number, number]
  /** Added to a kingpin's lean and caster, with all that sits on it. */
  readonly tilt?: Partial<Readonly<Record<Side, { readonly camber: number; readonly caster: number }>>>
  /** Added to a wheel's camber and toe against its kingpin, housing or arm. */
  readonly shim?: Partial<Readonly<Record<Side, { readonly camber: number; readonly toe: number }>>>
  /** Whole axle turned, seen from above to the left. */
  readonly yaw?: number
  /** Whole axle shifted. */
  readonly shift?: Point
}

/** One way in which an axle may differ from its model, per unit of it. */
export interface AxleWay {
  /** Of a corner as drawn (a left one). */
  readonly left?: Displacement
  readonly right?: Displacement
  readonly whole?: WholeWay
  /** Rack to the left, m. */
  readonly rack?: number
}

/** An axle at one height: its numbers (`vehicle-vector.ts`), and how fast each way changes them. */
export interface AxleModel {
  readonly numbers: Float64Array
  readonly rate: (way: AxleWay) => Float64Array
  /** The same as a chord: exact, over so much of the way; null where the axle cannot stand so. */
  readonly chord: (way: AxleWay, size: number) => Float64Array | null
  /** One wheel higher against the body, per m. */
  readonly lift: (side: Side) => Float64Array
  /** One column per number of the model's points that is not known, at one standard deviation: of the model, both sides alike. */
  readonly ofModel: readonly Float64Array[]
  /** The same of what left and right differ by in production. */
  readonly ofMaking: readonly Float64Array[]
}
