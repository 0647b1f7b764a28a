import fc from 'fast-check'
import { expect } from 'vitest'
import {
  axlePoseAt,
  type BoxSteering,
  idlerAngle,
  type SolidAxlePoints,
  solidAxle,
  steeringShift,
  type TwistBeam,
  twistBeamReadings,
} from '../../../src/linkage/index.ts'
import { metre, Refusal, rad } from '../../../src/quantity/index.ts'
import { law, refuses } from '../../support/law.ts'
import { axlePoints, beam, box, straight } from '../../support/linkage-examples.ts'
import { trackBarAxle } from './any-axle.ts'

type Path = readonly (string | number)[]
/** Every place in a value, the value itself included. */
const paths = (value: unknown): Path[] =>
  typeof value === 'object' && value !== null
    ? [[], ...Object.entries(value).flatMap(([k, v]) => paths(v).map((rest) => [k, ...rest]))]
    : [[]]
/** The value with something else at a place. */
function spoiled(value: unknown, path: Path, by: unknown): unknown {
  const [first, ...rest] = path
  if (first === undefined) return by
  const copy: Record<string, unknown> | unknown[] = Array.isArray(value)
    ? [...value]
    : { ...(value as object) }
  const at = copy as Record<string, unknown>
  at[first] = spoiled(at[first], rest, by)
  return copy
}

const junk = fc.constantFrom<unknown>(
  undefined,
  null,
  'x',
  '0.3',
  true,
  [],
  {},
  [1, 2],
  1e9,
  0,
  -1,
  Number.NaN,
  [[]],
)
const still = { left: metre(0), right: metre(0) }
const doors: readonly (readonly [unknown, (value: never) => unknown])[] = [
  [axlePoints, (v: SolidAxlePoints) => solidAxle(v)],
  [trackBarAxle, (v: SolidAxlePoints) => solidAxle(v)],
  [
    { tilt: { left: { camber: 0, caster: 0 } }, links: [0, 0, 0, 0], tieRod: 0 },
    (v) => solidAxle(trackBarAxle, v),
  ],
  [box, (v: BoxSteering) => idlerAngle(v, rad(0.1))],
  [beam, (v: TwistBeam) => twistBeamReadings(v, still)],
]

law(
  'LI3 whatever stands in an axle, a steering or a beam, it gets an answer or a refusal, never a fault',
  fc.record({ door: fc.constantFrom(...doors), place: fc.nat(), by: junk }),
  ({ door: [value, call], place, by }) => {
    const all = paths(value)
    // without its own settings an axle is as designed: undefined is an answer there
    try {
      call(spoiled(value, all[place % all.length]!, by) as never)
    } catch (error) {
      expect(error).toBeInstanceOf(Refusal)
    }
    return true
  },
  { runs: 1500 },
)

const axle = (change: object) => solidAxle({ ...axlePoints, ...change } as SolidAxlePoints)
refuses('bad-input', () => solidAxle(null as never), 'points')
refuses('bad-input', () => axle({ left: undefined }), 'left')
refuses('bad-input', () => axle({ location: { kind: 'air' } }), 'location.kind')
refuses(
  'bad-input',
  () => axle({ left: { ...axlePoints.left, wheelCentre: [0, 1e9, 0] } }),
  'left.wheelCentre',
)
refuses(
  'bad-input',
  () => axle({ steering: { ...axlePoints.steering, tieLeft: undefined } }),
  'steering.tieLeft',
)
refuses('bad-input', () => solidAxle(axlePoints, { links: [metre(0)] as never }), 'settings.links')
refuses('bad-input', () => twistBeamReadings(undefined as never, still), 'points')
refuses('bad-input', () => idlerAngle({ ...box, ratio: '16' as never }, rad(0.1)), 'ratio')
refuses(
  'bad-input',
  () => axlePoseAt(solidAxle(axlePoints), { ...straight, heave: undefined as never }),
  'heave',
)
refuses('bad-input', () => twistBeamReadings(beam, { left: metre(0) } as never), 'travel.right')
refuses('bad-input', () => steeringShift(box, { wheel: rad(0), inner: {} as never }), 'inner.left')
