import { type Adjuster, displacementOf, strokeOf } from '../../../src/adjust/index.ts'
import type { Corner } from '../../../src/corner/index.ts'
import {
  type AnyCornerPoints,
  type AxleEnd,
  type AxleSettings,
  axlePoseAt,
  type Displacement,
  displaced,
  type Mechanism,
  mechanism,
  newtonPose,
  type Point,
  type Pose,
  poseAt,
  type Side,
  type SolidAxlePoints,
  solidAxle,
  sumOfDisplacements,
  type TwistBeam,
  twistBeamReadings,
} from '../../../src/linkage/index.ts'
import { metre, rad } from '../../../src/quantity/index.ts'

export const sides = ['left', 'right'] as const

/** One axle as it was made: what its maker drew, and what adjusts. */
export interface TrueAxle {
  readonly end: AxleEnd
  /** What the examiner has: typical or fitted points. */
  readonly corner: Corner
  /** The model's own points. A corner is drawn left for both sides; a whole axle stands in vehicle axes. */
  readonly drawn: AnyCornerPoints | SolidAxlePoints | TwistBeam
  readonly adjusters: readonly Adjuster[]
  readonly axleAdjusters: readonly Adjuster[]
}

/** Angles of one wheel of a whole axle that are not as drawn, rad. */
interface OfWheel {
  camber: number
  toe: number
  /** Kingpin with everything on it. */
  pinCamber: number
  pinCaster: number
}

/** The state that an axle is in, beside its springs. */
export interface AxleState {
  /** What production and faults do to each corner, drawn left. */
  displaced: Record<Side, Displacement[]>
  /** Settings of the adjusters, in their own units. */
  settings: Record<Side | 'both', Record<string, number>>
  /** Eccentrics fitted the wrong way round. */
  turned: Record<Side, string[]>
  /** Rack, or centre link, off its middle while the steering wheel is straight: to the left, m. */
  rack: number
  whole: Record<Side, OfWheel>
  /** Added lengths of the rods of a solid axle, m. */
  tieRod: number
  dragLink: number
  links: [number, number, number, number]
  /** The whole axle turned (seen from above, to the left) and shifted against the body. */
  yaw: number
  shift: [number, number, number]
}

export const asDrawn = (): AxleState => ({
  displaced: { left: [], right: [] },
  settings: { left: {}, right: {}, both: {} },
  turned: { left: [], right: [] },
  rack: 0,
  whole: {
    left: { camber: 0, toe: 0, pinCamber: 0, pinCaster: 0 },
    right: { camber: 0, toe: 0, pinCamber: 0, pinCaster: 0 },
  },
  tieRod: 0,
  dragLink: 0,
  links: [0, 0, 0, 0],
  yaw: 0,
  shift: [0, 0, 0],
})

/** One wheel against the body. */
export interface WheelInBody {
  readonly camber: number
  readonly toe: number
  readonly caster: number | null
  readonly sai: number | null
  /** Forward of where the vehicle's axes start, m. */
  readonly x: number
}

/** What moves an axle: travel of each wheel, m, and steering to the left: m of rack, or rad of drop arm. */
export interface AxleAt {
  readonly travel: Readonly<Record<Side, number>>
  readonly steer: number
}

const made = new WeakMap<AnyCornerPoints, Mechanism>()
const near = new WeakMap<AnyCornerPoints, Pose>()

/** Both wheels against the body, exactly. @throws {Refusal} where the axle cannot be assembled. */
export function wheelsInBody(axle: TrueAxle, state: AxleState, at: AxleAt): Record<Side, WheelInBody> {
  const { drawn } = axle
  if ('layout' in drawn) {
    const wheel = (side: Side): WheelInBody => cornerAt(axle, drawn, state, at, side)
    return { left: wheel('left'), right: wheel('right') }
  }
  return 'location' in drawn ? solidAt(axle, drawn, state, at) : beamAt(axle, drawn, state, at)
}

function cornerAt(
  axle: TrueAxle,
  drawn: AnyCornerPoints,
  state: AxleState,
  at: AxleAt,
  side: Side,
): WheelInBody {
  const out = side === 'left' ? 1 : -1
  const by = [...state.displaced[side]]
  for (const one of axle.adjusters) {
    const washer = one.kind === 'eccentric' && state.turned[side].includes(one.id)
    by.push(
      displacementOf(
        washer ? { ...one, fitted: 'turned round' } : one,
        drawn,
        state.settings[side][one.id] ?? 0,
      ),
    )
  }
  for (const one of axle.axleAdjusters)
    by.push(displacementOf(one, drawn, out * (state.settings.both[one.id] ?? 0)))
  if (!made.has(drawn)) made.set(drawn, mechanism(drawn))
  const m = displaced(made.get(drawn)!, sumOfDisplacements(by))
  const drive = {
    travel: metre(at.travel[side]),
    rack: metre(axle.end === 'front' ? out * (at.steer + state.rack) : 0),
  }
  let pose: Pose
  const from = near.get(drawn)
  if (from && Math.abs(from.rack - drive.rack) < 0.015) pose = newtonPose(m, drive, from)
  else {
    pose = poseAt(m, drive)
    if (Math.abs(drive.rack) < 0.015) near.set(drawn, pose)
  }
  return { camber: pose.camber, toe: pose.toe, caster: pose.caster, sai: pose.sai, x: pose.wheelCentre[0] }
}

/** Heave and roll of the line through the hubs from the travels of both. */
function heaveAndRoll(at: AxleAt, halfTrack: number): { heave: number; roll: number } {
  const { left, right } = at.travel
  return { heave: (left + right) / 2, roll: Math.asin((left - right) / (2 * halfTrack)) }
}

function solidAt(
  axle: TrueAxle,
  drawn: SolidAxlePoints,
  state: AxleState,
  at: AxleAt,
): Record<Side, WheelInBody> {
  const tilt = { left: { camber: 0, caster: 0 }, right: { camber: 0, caster: 0 } }
  const shim = { left: { camber: 0, toe: 0 }, right: { camber: 0, toe: 0 } }
  for (const side of sides) {
    const own = state.whole[side]
    tilt[side] = { camber: own.pinCamber, caster: own.pinCaster }
    shim[side] = { camber: own.camber, toe: own.toe }
    for (const one of axle.adjusters) {
      const setting = state.settings[side][one.id] ?? 0
      if (one.kind === 'offset sleeve') {
        tilt[side].camber += one.tilt * Math.cos(setting)
        tilt[side].caster += one.tilt * Math.sin(setting)
      } else if (one.kind === 'wedge') shim[side][one.tilts] += strokeOf(one, setting)
    }
  }
  let [tieRod, dragLink] = [state.tieRod, state.dragLink]
  const links = [...state.links] as [number, number, number, number]
  for (const one of axle.axleAdjusters) {
    if (one.kind !== 'thread') continue
    const by = strokeOf(one, state.settings.both[one.id] ?? 0)
    if (one.length === 'tie-rod') tieRod += by
    else if (one.length === 'drag-link') dragLink += by
    else links[Number(one.length.slice(-1))]! += by
  }
  const steered = drawn.steering !== null
  const placed = moved(drawn, state)
  const settings: AxleSettings = {
    shim: shim as unknown as NonNullable<AxleSettings['shim']>,
    ...(steered ? { tilt: tilt as unknown as NonNullable<AxleSettings['tilt']> } : {}),
    ...(steered ? { tieRod: metre(tieRod), dragLink: metre(dragLink + placed.dragLink) } : {}),
    links: links.map((by) => metre(by)) as unknown as NonNullable<AxleSettings['links']>,
  }
  const { heave, roll } = heaveAndRoll(at, drawn.left.wheelCentre[1])
  const pose = axlePoseAt(solidAxle(placed.points, settings), {
    heave: metre(heave),
    roll: rad(roll),
    drop: rad(steered ? at.steer + state.rack : 0),
  })
  const wheel = (side: Side): WheelInBody => ({
    camber: pose[side].camber,
    toe: pose[side].toe,
    caster: pose[side].caster,
    sai: pose[side].sai,
    x: pose[side].wheelCentre[0],
  })
  return { left: wheel('left'), right: wheel('right') }
}

/** An axle on leaf springs that sits turned or shifted on them; the drag link keeps its length. */
function moved(
  drawn: SolidAxlePoints,
  { yaw, shift }: AxleState,
): { points: SolidAxlePoints; dragLink: number } {
  if ((yaw === 0 && shift.every((by) => by === 0)) || drawn.location.kind !== 'leaf')
    return { points: drawn, dragLink: 0 }
  const middle = drawn.left.wheelCentre[0]
  const put = ([x, y, z]: Point): Point => [
    middle + (x - middle) * Math.cos(yaw) - y * Math.sin(yaw) + shift[0],
    (x - middle) * Math.sin(yaw) + y * Math.cos(yaw) + shift[1],
    z + shift[2],
  ]
  // turned to the left: the left wheel toes out, the right one in
  const wheel = (side: Side): SolidAxlePoints['left'] => {
    const one = drawn[side]
    return {
      ...one,
      wheelCentre: put(one.wheelCentre),
      toe: rad(one.toe - (side === 'left' ? yaw : -yaw)),
      kingpin: one.kingpin && { lower: put(one.kingpin.lower), upper: put(one.kingpin.upper) },
    }
  }
  const steering = drawn.steering && {
    ...drawn.steering,
    dragOuter: put(drawn.steering.dragOuter),
    tieLeft: put(drawn.steering.tieLeft),
    tieRight: put(drawn.steering.tieRight),
  }
  const far = (s: SolidAxlePoints['steering']): number =>
    s ? Math.hypot(...s.dragOuter.map((x, i) => x - s.dragInner[i]!)) : 0
  return {
    points: { ...drawn, left: wheel('left'), right: wheel('right'), steering },
    dragLink: far(drawn.steering) - far(steering),
  }
}

function beamAt(axle: TrueAxle, drawn: TwistBeam, state: AxleState, at: AxleAt): Record<Side, WheelInBody> {
  const shim = { left: { camber: 0, toe: 0 }, right: { camber: 0, toe: 0 } }
  for (const side of sides) {
    const yaw = side === 'left' ? -state.yaw : state.yaw
    shim[side] = { camber: state.whole[side].camber, toe: state.whole[side].toe + yaw }
    for (const one of axle.adjusters)
      if (one.kind === 'wedge') shim[side][one.tilts] += strokeOf(one, state.settings[side][one.id] ?? 0)
  }
  const beam: TwistBeam = { ...drawn, shim: shim as unknown as NonNullable<TwistBeam['shim']> }
  const both = twistBeamReadings(beam, {
    left: metre(at.travel.left),
    right: metre(at.travel.right),
  })
  const half = drawn.left.wheelCentre[1]
  const wheel = (side: Side): WheelInBody => ({
    camber: both[side].camber,
    toe: both[side].toe,
    caster: null,
    sai: null,
    x: both[side].wheelCentre[0] + (side === 'left' ? -half : half) * state.yaw + state.shift[0],
  })
  return { left: wheel('left'), right: wheel('right') }
}
