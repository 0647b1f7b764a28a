import { describe, expect, test } from 'vitest'
import { posesOf } from '../../../src/cli/poses/index.ts'
import {
  closedPose,
  mechanism,
  type Pose,
  poseAt,
  rateOf,
  settingsFor,
  travelRange,
} from '../../../src/linkage/index.ts'
import { inDegrees, metre } from '../../../src/quantity/index.ts'
import { type PublishedRow, published } from '../../support/published.ts'
import { badCases, pointsOf, poseCases, turnedBy } from './read-cases.ts'

// The file's two ways agree to better than 1e-12; the tolerance leaves room for the last digits of ours.
const angle = 1e-9
const length = 1e-12
const { source } = poseCases

type Out = Readonly<Record<string, number | null | readonly number[]>>

function rows(id: string, pose: () => Pose, out: Out): PublishedRow[] {
  let kept: Pose | undefined
  const got = (): Pose => (kept ??= pose())
  const all: [string, number | null, (p: Pose) => number | null, number][] = []
  const degrees = (name: string, of: (p: Pose) => number | null) =>
    all.push([name, out[name] as number | null, (p) => inDegrees(of(p)!), angle])
  degrees('camber', (p) => p.camber)
  degrees('toe', (p) => p.toe)
  degrees('caster', (p) => p.caster)
  degrees('sai', (p) => p.sai)
  degrees('arm_upper', (p) => p.armUpper)
  degrees('arm_lower', (p) => p.armLower)
  for (const [name, of] of [
    ['scrub', (p: Pose) => p.scrub],
    ['trail', (p: Pose) => p.trail],
    ['scrub_wheel', (p: Pose) => p.scrubWheel],
    ['trail_wheel', (p: Pose) => p.trailWheel],
    ['strut_length', (p: Pose) => p.strutLength],
  ] as const)
    all.push([name, (out[name] ?? null) as number | null, of, length])
  for (const [name, of] of [
    ['wheel_center', (p: Pose) => p.wheelCentre],
    ['contact', (p: Pose) => p.contact],
  ] as const)
    for (let i = 0; i < 3; i++)
      all.push([`${name}.${'xyz'[i]}`, (out[name] as readonly number[])[i]!, (p) => of(p)[i]!, length])
  return all.flatMap(([name, want, of, within]) =>
    want === null
      ? []
      : [{ id: `${id} ${name}`, got: () => of(got())!, want, within, source, basis: 'derived' as const }],
  )
}

for (const c of poseCases.cases) {
  const m = mechanism(pointsOf(c))
  const drive = (p: { travel: number; rack: number }) => ({ travel: metre(p.travel), rack: metre(p.rack) })
  published(
    `LI1 poses of ${c.id}`,
    c.poses.flatMap((p) => rows(`${c.id} ${p.travel} ${p.rack}`, () => poseAt(m, drive(p)), p.out)),
  )
  published(
    `LI5 closed form of ${c.id}`,
    c.poses
      .filter((_, i) => i % 4 === 0)
      .flatMap((p) => rows(`${c.id} closed ${p.travel} ${p.rack}`, () => closedPose(m, drive(p)), p.out)),
  )
  published(`LI4 ends of travel of ${c.id}`, [
    ...(['up', 'down'] as const).map((way) => ({
      id: `${c.id} ${way}`,
      got: () => travelRange(m, { rack: metre(0) })[way],
      want: c.travel_limit_rack0[way],
      within: 1e-9, // near a fold a residual of 1e-16 is 1e-8 in the state and its square in travel
      source,
      basis: 'derived' as const,
    })),
  ])
  if (c.adjusted_poses)
    published(
      `LI6 displaced poses of ${c.id}`,
      c.adjusted_poses.flatMap((p) =>
        rows(
          `${c.id} turned ${p.theta_front_deg} ${p.theta_rear_deg} ${p.tie_delta}`,
          () => poseAt(mechanism(pointsOf(c), turnedBy(c, p)), drive(p)),
          p.out,
        ),
      ),
    )
  if (c.sensitivities) {
    const { front, rear } = c.geometry.adjusters!
    const along = (e: typeof front) => [e.e * e.slot[0], e.e * e.slot[1], e.e * e.slot[2]] as const
    const at = drive({ travel: 0, rack: 0 })
    const got = {
      theta_front_deg_per_deg: [rateOf(m, at, { body: { upperFrontInner: along(front) } }), 1],
      theta_rear_deg_per_deg: [rateOf(m, at, { body: { upperRearInner: along(rear) } }), 1],
      tie_deg_per_mm: [rateOf(m, at, { length: { tie: 1 } }), inDegrees(1) / 1000],
    } as const
    published(
      `LI7 rates of ${c.id}`,
      Object.entries(c.sensitivities).flatMap(([name, angles]) =>
        Object.entries(angles).map(([a, want]) => {
          const [rates, scale] = got[name as keyof typeof got]
          return {
            id: `${c.id} ${name} ${a}`,
            got: rates[a as 'camber']! * scale,
            want,
            within: 1e-12, // the file's agreement
            source,
            basis: 'derived' as const,
          }
        }),
      ),
    )
  }
  if (c.inverse)
    published(
      `LI8 settings of ${c.id}`,
      c.inverse.flatMap(({ target_delta, solution }, i) => {
        const { front, rear } = c.geometry.adjusters!
        const shift = (e: typeof front, s: number) =>
          [e.e * s * e.slot[0], e.e * s * e.slot[1], e.e * s * e.slot[2]] as const
        const { settings } = settingsFor(m, drive({ travel: 0, rack: 0 }), {
          settings: [
            {
              name: 'front',
              range: [-1, 1],
              displacement: (s) => ({ body: { upperFrontInner: shift(front, s) } }),
            },
            {
              name: 'rear',
              range: [-1, 1],
              displacement: (s) => ({ body: { upperRearInner: shift(rear, s) } }),
            },
            { name: 'tie', range: [-0.05, 0.05], displacement: (s) => ({ length: { tie: s } }) },
          ],
          changes: Object.fromEntries(Object.entries(target_delta).map(([k, v]) => [k, (v * Math.PI) / 180])),
        })
        const row = (name: string, got: number, want: number, within: number) => ({
          id: `${c.id} inverse ${i} ${name}`,
          got,
          want,
          within,
          source,
          basis: 'derived' as const,
        })
        return [
          row('front', inDegrees(Math.asin(settings[0]!)), solution.theta_front_deg, angle),
          row('rear', inDegrees(Math.asin(settings[1]!)), solution.theta_rear_deg, angle),
          row('tie', settings[2]!, solution.tie_delta, length),
        ]
      }),
    )
}

describe('LI3 what cannot be is refused, what is near the limit is answered', () => {
  const { output, ok } = posesOf(badCases)
  const got = new Map((output['bad'] as { id: string; error: string | null }[]).map((row) => [row.id, row]))
  test('every row has an answer', () => expect(ok).toBe(true))
  for (const row of badCases.bad)
    test(`${row.id} [derived]`, () => {
      const mine = got.get(row.id) as { error: string | null; out?: Out; sentence?: string }
      expect(mine.error).toBe(row.error)
      if (row.error !== null) expect(mine.sentence!.length).toBeGreaterThan(20)
      for (const [name, want] of Object.entries(row.out ?? {}))
        if (typeof want === 'number') expect(Math.abs((mine.out![name] as number) - want)).toBeLessThan(1e-9)
    })
})
