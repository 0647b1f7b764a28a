import type { Corner } from '../corner/index.ts'

/** Which axle. @source definition */
export type AxleName = 'front' | 'rear'
/** Which side of the vehicle. @source definition */
export type Side = 'left' | 'right'

/** A part as it stands on the vehicle: once per corner, once per axle, or once (the body). @source definition */
export interface PartNode {
  /** "front left lower-arm", "front rack", "body". */
  readonly id: string
  /** As the corner model calls it. */
  readonly name: string
  /** For people: "left lower arm". */
  readonly called: string
  readonly kind: Corner['parts'][string]['kind']
  readonly axle: AxleName | null
  readonly side: Side | null
  readonly file: Corner['parts'][string]
}

/** A joint as it stands on the vehicle. @source definition */
export interface JointNode {
  readonly id: string
  readonly name: string
  readonly called: string
  readonly kind: Corner['joints'][string]['kind']
  readonly joins: readonly [string, string]
  readonly axle: AxleName
  readonly side: Side | null
  readonly file: Corner['joints'][string]
  /** Its letter on the drawing, where it has a point. */
  readonly letter: string | null
  /** Loose, it drops a wheel, the steering or the brakes. */
  readonly red: boolean
  /** The position in which it is made final. */
  readonly final: 'any position' | 'at ride height' | 'wheels straight' | 'on the ground'
  readonly place: Place
  /** It holds an adjuster that is turned or slid with the bolt nipped up: it stays run up until the last move. */
  readonly adjusts: boolean
  /** Open, it lets the knuckle move further than hose and lead reach. */
  readonly locates: boolean
  /** It belongs to the steering. */
  readonly steers: boolean
}

/** Where the hands are. @source definition */
export type Place =
  | 'in the cabin'
  | 'around the vehicle'
  | 'at the wheel'
  | 'from above'
  | 'under'
  | 'at the bench'

/** What may hold stored energy in place of its retaining set. @source definition */
export type StandIn =
  | 'jack under the arm'
  | 'spring compressor'
  | 'axle on stands'
  | 'torsion bar unwound'
  | 'air let out'

/** Stored energy and what keeps it in. @source definition */
export interface HoldNode {
  /** The part that stores it. */
  readonly id: string
  readonly called: string
  readonly axle: AxleName
  readonly side: Side | null
  readonly stores: 'coil' | 'torsion bar' | 'leaf' | 'air' | 'gas'
  /** Each list holds by itself while all its joints hold. */
  readonly heldBy: readonly (readonly string[])[]
  /** All of them, and the droop stop. */
  readonly joints: readonly string[]
  readonly standIns: readonly StandIn[]
  /** Joints that must hold while a jack under the arm stands in: the arm's pivots. */
  readonly jackPath: readonly string[]
  /** It is out of reach of its ends as soon as it is slack. */
  readonly loose: boolean
}

/** An adjuster as it stands on the vehicle. @source definition */
export interface AdjusterNode {
  readonly id: string
  readonly called: string
  readonly axle: AxleName
  readonly side: Side | null
  readonly sets: 'camber and caster' | 'toe'
  /** The joints that hold its setting. */
  readonly joints: readonly string[]
}

/** One or two axles as parts and joints, each where it stands. @source definition */
export interface Assembly {
  readonly axles: readonly AxleName[]
  readonly parts: Readonly<Record<string, PartNode>>
  readonly joints: Readonly<Record<string, JointNode>>
  readonly holds: Readonly<Record<string, HoldNode>>
  readonly adjusters: Readonly<Record<string, AdjusterNode>>
  /** The joints of each part. */
  readonly touching: Readonly<Record<string, readonly string[]>>
  /** The corner models it was made from. */
  readonly corners: Readonly<Partial<Record<AxleName, Corner>>>
}
