import { type Metre, metre } from '../quantity/index.ts'
import type { Mechanism } from './mechanism.ts'
import { mechanism } from './mechanism.ts'
import type { Pose } from './pose.ts'
import { designState } from './pose-at.ts'
import { poseOfState } from './pose-of-state.ts'

/** How far a wheel has moved over the ground plan against its design pose. @source definition */
export interface WheelShift {
  /** Outward is positive: half of the track change, at the contact point. */
  readonly halfTrack: Metre
  /** Forward is positive, at the contact point. */
  readonly wheelbase: Metre
  /** The same of the wheel centre. */
  readonly halfTrackAtCentre: Metre
  readonly wheelbaseAtCentre: Metre
}

/**
 * Change of half-track and wheelbase of a pose against the design pose.
 *
 * @source definition
 * @example inMillimetres(wheelShift(m, poseAt(m, { travel: mm(-60), rack: mm(0) })).halfTrack) // -12.7909
 */
export function wheelShift(m: Mechanism, pose: Pose): WheelShift {
  const bare = mechanism(m.points)
  const zero = metre(0)
  const design = poseOfState(bare, designState(bare), { travel: zero, rack: zero })
  return {
    halfTrack: metre(pose.contact[1] - design.contact[1]),
    wheelbase: metre(pose.contact[0] - design.contact[0]),
    halfTrackAtCentre: metre(pose.wheelCentre[1] - design.wheelCentre[1]),
    wheelbaseAtCentre: metre(pose.wheelCentre[0] - design.wheelCentre[0]),
  }
}
