import type { Point, Side } from '../linkage/index.ts'
import type { Metre, Radian, Turn } from '../quantity/index.ts'

/**
 * Where the person looks from. `outside` is the wheel's side of the car, `inside` the other way round.
 *
 * @source definition
 */
export type View = 'front' | 'rear' | 'outside' | 'inside' | 'above' | 'below'
/** What an adjuster acts on: one wheel, or both wheels of its axle. @source definition */
export type ActsOn = Side | 'both'
/** Sense of turning as the person sees it. @source definition */
export type Looks = 'clockwise' | 'anticlockwise'

/** What every adjuster has: one scalar setting with a range, a step and a play. */
interface OneSetting<Setting extends number> {
  readonly id: string
  /** As the person calls it: "front eccentric". The side is added by whoever speaks. */
  readonly name: string
  /** Lowest and highest setting. */
  readonly range: readonly [Setting, Setting]
  /** Smallest amount that a hand can set on purpose. */
  readonly step: Setting
  /** Half-width of where it may come to rest when it is tightened; 0 when it cannot move. */
  readonly play: Setting
  /** Which angle it is there for, where the layout does not say it plainly. */
  readonly sets?: 'caster' | 'camber' | 'toe'
}

/**
 * A washer with its hole off centre: the point it holds moves along its slot by throw · sin setting.
 * Setting 0 is the middle of the slot. The range stays within a quarter turn either side: the other half
 * of the washer only repeats the same shifts.
 * @source definition
 */
export interface Eccentric extends OneSetting<Radian> {
  readonly kind: 'eccentric'
  /** Body point that it moves: lowerFrontInner, inner3 … */
  readonly moves: string
  /** Unit vector along the slot, in the LEFT corner's axes; a positive setting moves the point this way. */
  readonly along: Point
  /** Hole centre to washer centre. */
  readonly throw: Metre
  readonly seenFrom: View
  /** How a growing setting looks on the LEFT corner; the right one is its mirror. */
  readonly positiveLooks: Looks
  /** Clock angle of the mark at setting 0 on the LEFT corner, clockwise from 12 o'clock (from above: from the front of the car). */
  readonly markAt: Radian
  /** A washer fitted the wrong way round moves the point the other way. Default: as drawn. */
  readonly fitted?: 'as drawn' | 'turned round'
}

/** Shims under a pivot shaft: setting is the thickness of the pack. @source definition */
export interface ShimPack extends OneSetting<Metre> {
  readonly kind: 'shims'
  /** Body points that it moves, one per bolt it stands under. */
  readonly moves: readonly string[]
  /** Unit vector, in the LEFT corner's axes; a thicker pack moves the points this way. */
  readonly along: Point
  /** Thicknesses that can be had. */
  readonly sizes: readonly Metre[]
  /** Thickness at which the points lie as drawn. Default 0. */
  readonly asDrawn?: Metre
}

/**
 * A threaded rod or sleeve that makes a link longer; setting counts turns, longer is positive.
 *
 * @source definition
 */
export interface TieRodThread extends OneSetting<Turn> {
  readonly kind: 'thread'
  /** Link that gets longer: tie, link0 …; of a solid axle: tie-rod, drag-link, or link0 … link3 of its location. */
  readonly length: string
  readonly pitch: Metre
  /** A sleeve with left-hand and right-hand thread: twice the pitch per turn. */
  readonly sleeve: boolean
  readonly seenFrom: View
  /** How the rod (or sleeve) is turned to get longer, on the LEFT side. */
  readonly positiveLooks: Looks
  /** Most vehicles carry the same thread left and right, so the hand turns the same way seen from outside. Default: same. */
  readonly rightSide?: 'same thread' | 'mirrored thread'
}

/**
 * One of two bolts sits in a slot, and the knuckle turns about the other: setting is the shift in the slot.
 *
 * @source definition
 */
export interface SlottedBolt extends OneSetting<Metre> {
  readonly kind: 'slotted bolt'
  /** What turns against the knuckle's joints: the strut's line, or the stub that carries the wheel. */
  readonly turns: 'strut' | 'stub'
  /** The bolt it turns about, at the design pose. */
  readonly pivot: Point
  /** Unit vector: for a positive setting the wheel turns about it, right-handed, against the strut (or the joints). Rearward (−x) tips the top of a left wheel outward. */
  readonly axis: Point
  /** Pivot bolt to slotted bolt. */
  readonly boltSpacing: Metre
  readonly seenFrom: View
}

/** A lower arm or its bracket in a slot: setting is how far it was slid. @source definition */
export interface Slide extends OneSetting<Metre> {
  readonly kind: 'slide'
  /** Body points that it takes along. */
  readonly moves: readonly string[]
  /** Unit vector, in the LEFT corner's axes; a positive setting moves the points this way. */
  readonly along: Point
  readonly seenFrom: View
}

/** The plate that carries the top of a strut, shifted on the body: setting is how far. @source definition */
export interface TopPlate extends OneSetting<Metre> {
  readonly kind: 'top plate'
  /** The body point of the strut's top. */
  readonly moves: string
  /** Unit vector, in the LEFT corner's axes; a positive setting moves the top this way. */
  readonly along: Point
  readonly seenFrom: View
}

/**
 * A sleeve that leans the kingpin of a solid axle: camber by tilt · cos setting, caster by tilt · sin setting.
 * Setting 0 is all camber, top outward; a quarter turn on is all caster, top rearward. It may be a full circle.
 * @source definition
 */
export interface KingpinSleeve extends OneSetting<Radian> {
  readonly kind: 'offset sleeve'
  /** How far it leans the kingpin. */
  readonly tilt: Radian
  readonly seenFrom: View
  /** How a growing setting looks on the LEFT corner; the right one is its mirror. */
  readonly positiveLooks: Looks
  /** Clock angle of the mark at setting 0 on the LEFT corner, clockwise from 12 o'clock (from above: from the front of the car). */
  readonly markAt: Radian
}

/** A wedge-shaped shim between axle, beam or knuckle and hub: setting is the angle that it adds, 0 without one. @source definition */
export interface Wedge extends OneSetting<Radian> {
  readonly kind: 'wedge'
  /** Camber: top outward positive. Toe: front inward positive. */
  readonly tilts: 'camber' | 'toe'
  /** Wedges that can be had; each may be fitted either way round. */
  readonly sizes: readonly Radian[]
  readonly seenFrom: View
  /** Setting at which the wheel stands as drawn. Default 0. */
  readonly asDrawn?: Radian
}

/**
 * A sub-frame that can be shifted across the vehicle: setting is the shift, to the left positive. The named points of
 * the left corner go outward by it, those of the right corner inward.
 * @source definition
 */
export interface SubFrameShift extends OneSetting<Metre> {
  readonly kind: 'sub-frame shift'
  readonly along: 'y'
  /** Body points that it takes along, by the names of one corner. */
  readonly moves: readonly string[]
  readonly seenFrom: View
}

/**
 * Anything with one setting that displaces points. Later kinds join here; `displacementOf` is all that the rest asks of them.
 *
 * @source definition
 */
export type Adjuster =
  | Eccentric
  | ShimPack
  | TieRodThread
  | SlottedBolt
  | Slide
  | TopPlate
  | KingpinSleeve
  | Wedge
  | SubFrameShift

/** Why the adjust room says no. @source definition */
export type AdjustRefusal =
  | 'bad-adjuster'
  | 'setting-out-of-range'
  | 'no-such-point'
  | 'no-reading'
  | 'bad-limit'
  | 'bad-option'
  | 'repeated-id'
  | 'wrong-length'
  | 'wrong-place'
