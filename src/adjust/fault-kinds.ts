import type { WheelAngle } from '../linkage/index.ts'

/**
 * Kinds of fault that can hold a reading out of the adjusters' reach; what it is, the findings decide.
 *
 * @source definition
 */
export type FaultKind =
  | 'bent lower arm'
  | 'bent upper arm'
  | 'bent knuckle'
  | 'bent strut tube'
  | 'shifted tower'
  | 'shifted cross-member'
  | 'collapsed bush'
  | 'worn ball joint'
  | 'sagged spring'
  | 'bent tie rod or steering arm'
  | 'rack off centre'
  | 'wrong part'
  | 'eccentric fitted the wrong way round'
  | 'rear axle shifted'
  | 'bent axle or beam'
  | 'worn kingpin'

/**
 * Which kinds of fault move which angle by more than an adjuster can take back. Order: common first.
 *
 * @source common practice, no source (classical table of SAI, included angle and camber; design points that move with each part)
 */
export const faultKinds: Readonly<Record<WheelAngle | 'thrust', readonly FaultKind[]>> = {
  camber: [
    'sagged spring',
    'worn ball joint',
    'worn kingpin',
    'bent axle or beam',
    'bent lower arm',
    'bent strut tube',
    'bent knuckle',
    'shifted cross-member',
    'shifted tower',
    'bent upper arm',
    'eccentric fitted the wrong way round',
    'wrong part',
  ],
  caster: [
    'collapsed bush',
    'bent axle or beam',
    'bent lower arm',
    'shifted cross-member',
    'shifted tower',
    'bent upper arm',
    'eccentric fitted the wrong way round',
    'wrong part',
  ],
  sai: [
    'bent axle or beam',
    'bent lower arm',
    'shifted tower',
    'shifted cross-member',
    'bent upper arm',
    'wrong part',
  ],
  toe: [
    'bent tie rod or steering arm',
    'bent axle or beam',
    'rack off centre',
    'sagged spring',
    'shifted cross-member',
    'wrong part',
  ],
  thrust: ['rear axle shifted', 'collapsed bush', 'bent axle or beam', 'bent lower arm'],
}
