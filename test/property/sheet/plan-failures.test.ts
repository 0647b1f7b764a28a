import { describe, expect, test } from 'vitest'
import { readCorner } from '../../../src/corner/index.ts'
import type { Entry } from '../../../src/job/index.ts'
import { readJob } from '../../../src/job/index.ts'
import { readKit } from '../../../src/kit/index.ts'
import { type PlanSheet, planOfJob, planSheetFrom, type SheetSources } from '../../../src/sheet/index.ts'
import { readSpec } from '../../../src/spec/index.ts'
import { demoFile } from '../../support/demo-file.ts'

type Read<T> = { ok: true; value: T } | { ok: false; problems: unknown }
function whole<T>(reading: Read<T>): T {
  if (reading.ok) return reading.value
  throw new Error(JSON.stringify(reading.problems))
}
const effort = { budget: 1e4 }
const van: SheetSources = {
  job: whole(readJob(demoFile('port-unit-12/port-unit-12.job.json'))),
  corners: { front: whole(readCorner(demoFile('port-unit-12/front.corner.json'))), rear: null },
  spec: whole(readSpec(demoFile('port-unit-12/port-unit-12.spec.json'))),
  kit: whole(readKit(demoFile('port-kit.kit.json'))),
}
const logged = (
  ...entries: readonly (readonly [kind: string, data: Record<string, unknown>])[]
): SheetSources => ({
  ...van,
  job: {
    ...van.job,
    entries: [...van.job.entries, ...entries.map(([kind, data]): Entry => ({ kind, data }))],
  },
})
const linesOf = ({ bands }: PlanSheet) => bands.flatMap(({ lines }) => lines)
const taper = { what: 'taper will not part', joint: 'tie-rod-end', wheel: 'front right' }
const deviation = (data: Record<string, unknown>) => ['deviation', data] as const

describe('what failed', () => {
  test('SH24 an open deviation of the log is a branch: told in a sentence, with its line and its reason', () => {
    const sheet = planSheetFrom(logged(deviation(taper)), { effort })
    expect(sheet.branches).toHaveLength(1)
    expect(sheet.branches[0]!.because).toMatch(/^taper will not part: right /)
    expect(sheet.branches[0]!.words).toMatch(/^Set the separator on .*; if that does not do, next is /)
    expect(sheet.goal.at(-1)).toBe(sheet.branches[0]!.because)
    const line = linesOf(sheet).find(({ id }) => id === 'free front right tie-rod-end')!
    expect(line.words).toMatch(/^Set the separator/)
    expect(line.why).toMatch(/^taper will not part: .*next: /)
    expect(sheet.brokenLines).toBe(0)
    expect(sheet.troubles).toEqual([])
  })
  test('SH24 one that was put right is none, nor what changes no plan', () => {
    const at = van.job.entries.length
    const sources = logged(
      deviation(taper),
      ['cleared', { of: at, how: 'parted', hand: 'T' }],
      deviation({ what: 'other', remark: 'rain' }),
    )
    expect(planSheetFrom(sources, { effort }).branches).toEqual([])
  })
  test('SH24 one that cannot be so, or is nowhere, is told and the rest is planned', () => {
    const sheet = planSheetFrom(
      logged(
        deviation({ what: 'stripped thread', joint: 'gearbox', wheel: 'front left' }),
        deviation({ what: 'stud spins', joint: 'wheel-nuts', wheel: 'front left' }),
        deviation(taper),
      ),
      { effort },
    )
    expect(sheet.troubles.join('\n')).toMatch(
      /“stripped thread” of “gearbox” \(front left\), and no corner model/,
    )
    expect(sheet.troubles.join('\n')).toMatch(
      /“stud spins” cannot be at the left wheel nuts: .* The plan leaves it out/,
    )
    expect(sheet.branches).toHaveLength(1)
  })
  test('SH24 a failure alone is a goal; what was named stands above the log', () => {
    const bare = { ...van, job: { ...van.job, entries: van.job.entries.slice(0, 1) } }
    const failed = [{ what: 'rounded head', joint: 'front left lower-front-bolt' }] as const
    expect(planOfJob(bare, { failed, effort }).goal).toEqual({ replace: [], failed })
    const tried = [
      { what: 'taper will not part', joint: 'front right tie-rod-end', tried: ['press'] },
    ] as const
    const sheet = planSheetFrom(logged(deviation(taper)), { failed: tried, effort })
    expect(sheet.branches).toHaveLength(1)
    expect(sheet.branches[0]!.because).toMatch(/tried in vain: the separator left under load/)
    expect(sheet.branches[0]!.words).toMatch(/^Drive a fork/)
  })
  test('SH24 the wrong part in the box stops the plan before anything is loosened', () => {
    const sheet = planSheetFrom(
      logged(deviation({ what: 'wrong part in the box', part: 'lower-arm', wheel: 'front right' })),
      { effort },
    )
    expect(sheet.branches[0]!.words).toMatch(
      /^The plan stops before anything is loosened for the right lower arm/,
    )
    const ids = linesOf(sheet).map(({ id }) => id)
    const stop = ids.indexOf('wait for front right lower-arm')
    expect(stop).toBeGreaterThanOrEqual(0)
    expect(ids.slice(0, stop).filter((id) => /^(crack|open|jack up|lift)/.test(id))).toEqual([])
  })
})

describe('wrenches', () => {
  const kit = van.kit!
  const only = (range: readonly [number, number]): SheetSources => ({
    ...van,
    kit: {
      ...kit,
      adapters: {},
      wrenches: Object.fromEntries(
        Object.entries(kit.wrenches!)
          .slice(0, 1)
          .map(([id, wrench]) => [
            id,
            { ...wrench, range: range.map((value) => ({ value, text: `${value} N·m` })) as never },
          ]),
      ),
    },
  })
  const missing = (sources: SheetSources) =>
    planSheetFrom(sources, { effort }).missing.filter((one) => one.startsWith('No torque wrench'))
  test('SH25 what the kit’s torque wrenches do not reach is told once, with what to borrow', () => {
    const weak = missing(only([5, 40]))
    const asked = weak.find((one) => one.includes('Borrow a wrench that reaches'))!
    const highest = Math.max(...[...asked.matchAll(/\((\d+) N·m\)/g)].map(([, value]) => Number(value)))
    expect(highest).toBeGreaterThan(40)
    expect(asked).toContain(`Borrow a wrench that reaches ${highest} N·m`)
    const coarse = missing(only([300, 900])).find((one) => one.includes('goes down to'))!
    const lowest = Math.min(...[...coarse.matchAll(/\((\d+) N·m\)/g)].map(([, value]) => Number(value)))
    expect(coarse).toContain(`goes down to ${lowest} N·m`)
  })
  test('SH25 a kit that covers all says nothing; without a value there is nothing to cover', () => {
    expect(missing(only([5, 900]))).toEqual([])
    expect(missing({ ...only([5, 40]), spec: null })).toEqual([])
  })
})
