import { expect, test } from 'vitest'
import {
  axlePoseAt,
  axleRange,
  mechanism,
  motionCurve,
  newtonPose,
  poseAt,
  rackRange,
  solidAxle,
  travelRange,
  twistBeamReadings,
} from '../../../src/linkage/index.ts'
import { metre, Refusal, rad } from '../../../src/quantity/index.ts'
import { refuses } from '../../support/law.ts'
import { axlePoints, beam, from, m, straight } from '../../support/linkage-examples.ts'
import { fourLinkAxle, trackBarAxle } from './any-axle.ts'
import { fiveLink, strut, wishbone } from './any-corner.ts'
import { trailingArm } from './any-trailing-arm.ts'

const drive = (travel: number, rack = 0) => ({ travel: metre(travel), rack: metre(rack) })
const said = (call: () => unknown): string | null => {
  try {
    call()
    return null
  } catch (error) {
    expect(error).toBeInstanceOf(Refusal)
    const { sentence, remedy } = error as Refusal
    return `${sentence} ${remedy}`
  }
}
type Path = readonly string[]
const paths = (value: unknown): Path[] =>
  typeof value === 'object' && value !== null
    ? [[], ...Object.entries(value).flatMap(([k, v]) => paths(v).map((rest) => [k, ...rest]))]
    : [[]]
function spoiled(value: unknown, [first, ...rest]: Path, by: unknown): unknown {
  if (first === undefined) return by
  const copy = (Array.isArray(value) ? [...value] : { ...(value as object) }) as Record<string, unknown>
  copy[first] = spoiled(copy[first], rest, by)
  return copy
}

test('LI3 no sentence names a point as the program does, whatever is wrong with which point', () => {
  const doors: readonly (readonly [unknown, (value: never) => unknown])[] = [
    ...[wishbone, strut, fiveLink, trailingArm].map((p) => [p, mechanism] as const),
    ...[axlePoints, trackBarAxle, fourLinkAxle].map((p) => [p, solidAxle] as const),
    [beam, (b) => twistBeamReadings(b, { left: metre(0), right: metre(0) })],
  ]
  let heard = 0
  for (const [value, call] of doors)
    for (const path of paths(value))
      for (const junk of [Number.NaN, 1e9, undefined, 'x', [1]]) {
        const words = said(() => call(spoiled(value, path, junk) as never))
        if (words === null) continue
        heard++
        expect(words, path.join('.')).not.toMatch(/\b[a-z]+[A-Z]|\b(inner|outer|link)\d|\w\.\w/)
      }
  expect(heard).toBeGreaterThan(1000)
  expect(said(() => mechanism({ ...wishbone, upperFrontInner: [0, Number.NaN, 0] } as never))).toMatch(
    /^The upper front pivot \(y\) is NaN/,
  )
  // links count from 1, as on the drawing and in a file
  expect(said(() => poseAt(mechanism(fiveLink), drive(0.6)))).toMatch(/there link [1-5] is too/)
  expect(said(() => mechanism(wishbone, { body: { inner0: [0, 0, 0] } }))).toMatch(
    /Use one of: the upper front pivot, the upper rear pivot/,
  )
})

test('LI3 a drive of any size is answered, or refused in a sentence that holds no Infinity', () => {
  const axles = [axlePoints, trackBarAxle, fourLinkAxle].map((p) => solidAxle(p))
  const arm = mechanism(trailingArm)
  for (const size of [-1e308, -1e9, -1001, 1e4, 1e12, Number.MAX_VALUE]) {
    const calls = [
      () => poseAt(m, drive(size)),
      () => poseAt(m, drive(0, size)),
      () => poseAt(arm, drive(size)),
      () => newtonPose(m, drive(size), from),
      () => motionCurve(m, { travels: [metre(size)], rack: metre(0) }),
      () => travelRange(m, { rack: metre(size) }),
      () => rackRange(m, { travel: metre(size) }),
      () => twistBeamReadings(beam, { left: metre(0), right: metre(size) }),
      ...axles.flatMap((a) => [
        () => axlePoseAt(a, { ...straight, heave: metre(size) }),
        () => axlePoseAt(a, { ...straight, roll: rad(size) }),
        () => axlePoseAt(a, { ...straight, drop: rad(size) }),
        () => axleRange(a, { ...straight, heave: metre(size) }, 'roll'),
      ]),
    ]
    for (const call of calls) {
      const words = said(call)
      expect(words, `${call} ${size}`).not.toBeNull()
      expect(words).not.toMatch(/Infinity|NaN/)
    }
  }
})

refuses('unreachable', () => poseAt(m, drive(1e308)), 'travel')
refuses('unreachable', () => poseAt(m, drive(0, -1e308)), 'rack')
refuses('unreachable', () => axlePoseAt(solidAxle(axlePoints), { ...straight, heave: metre(1e308) }), 'heave')
refuses('unreachable', () => axlePoseAt(solidAxle(fourLinkAxle), { ...straight, roll: rad(7) }), 'roll')
refuses('unreachable', () => twistBeamReadings(beam, { left: metre(0), right: metre(1e308) }), 'right')

test('LI3 an axle too narrow for any step to count is not answered with the pose it began at', () => {
  const narrow = (y: number) => ({ ...fourLinkAxle.left, wheelCentre: [0, y, 0.34] as const })
  const words = said(() =>
    axlePoseAt(
      solidAxle({
        ...fourLinkAxle,
        location: axlePoints.location,
        left: narrow(1e-13),
        right: narrow(-1e-13),
      }),
      { ...straight, heave: metre(900) },
    ),
  )
  expect(words).toMatch(/The way ends at/)
})
