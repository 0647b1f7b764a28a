import { describe, expect, test } from 'vitest'
import { readCorner } from '../../../src/corner/index.ts'
import { type Entry, readJob } from '../../../src/job/index.ts'
import { factOf, judgeOrder } from '../../../src/plan/index.ts'
import { planOfJob, planSheetFrom, type SheetSources } from '../../../src/sheet/index.ts'
import { demoFile } from '../../support/demo-file.ts'

type Read<T> = { ok: true; value: T } | { ok: false; problems: unknown }
function whole<T>(reading: Read<T>): T {
  if (reading.ok) return reading.value
  throw new Error(JSON.stringify(reading.problems))
}
const effort = { budget: 1e4 }
const front = whole(readCorner(demoFile('port-unit-07/front.corner.json')))
const wheel = 'front left'
type Row = readonly [kind: string, data: Record<string, unknown>]
const opened: Row = [
  'opened',
  { number: '7-1', vehicle: 'Port unit 07', complaint: 'clonk', corners: { front: front.id } },
]
const wanted: Row = ['extra work', { what: 'arm', part: 'lower-arm', wheels: [wheel], answer: 'yes' }]
const job = (...rows: readonly Row[]): SheetSources => ({
  job: whole(
    readJob({
      format: 1,
      workshop: 'Port workshop',
      job: '7-1',
      entries: [opened, wanted, ...rows].map(([kind, data]): Entry => ({ kind, data })),
    }),
  ),
  corners: { front, rear: null },
  spec: null,
  kit: null,
})
const lifted: readonly Row[] = [
  ['set pressures', { front: '2.5 bar', rear: '2.5 bar' }],
  ['compared', { part: 'lower-arm', wheel, when: 'before lifting' }],
  ['undone', { joint: 'wheel-nuts', wheel, to: 'cracked' }],
  ['carried', { axle: 'front', by: 'stands', seen: true }],
  ['undone', { joint: 'wheel-nuts', wheel, to: 'open' }],
  ['placed', { part: 'wheel', wheel, where: 'off' }],
]
const idsOf = (sources: SheetSources, how = {}) => Object.keys(planOfJob(sources, { effort, ...how }).actions)

describe('going on from a log', () => {
  test('SH27 what the log says was done is not in the plan and is told; afresh it is', () => {
    const sources = job(...lifted)
    const ids = idsOf(sources)
    expect(ids).not.toContain('jack up front')
    expect(ids).not.toContain(`crack ${wheel} wheel-nuts`)
    expect(ids).not.toContain(`compare before ${wheel} lower-arm`)
    expect(ids).toContain(`take off ${wheel} lower-arm`)
    const sheet = planSheetFrom(sources, { effort })
    expect(sheet.done).toMatch(/^\d+ actions are done by the record, \d+ are left$/)
    expect(sheet.brokenLines).toBe(0)
    expect(sheet.bands[0]!.station).toMatch(/on stands/)
    const afresh = idsOf(sources, { afresh: true })
    expect(afresh).toContain('jack up front')
    expect(planSheetFrom(sources, { effort, afresh: true }).done).toBe('')
  })
  test('SH27 a log that says nothing of how the vehicle is held is planned from the sound vehicle', () => {
    expect(
      planOfJob(job(['undone', { joint: 'wheel-nuts', wheel, to: 'cracked' }]), { effort }).from,
    ).toEqual({})
  })
  test('SH27 a wheel that is off, and not a word of what carries the axle: seeing it carried comes first', () => {
    const sources = job(['placed', { part: 'wheel', wheel, where: 'off' }])
    const planned = planOfJob(sources, { effort })
    expect(planned.troubles.join(' ')).toMatch(/nobody has seen it carried/)
    expect(Object.keys(planned.actions).slice(0, 3)).toContain('see loaded front')
    expect(factOf(planned.from, `joint ${wheel} wheel-nuts`)).toBe('open')
  })
  test('SH27 a spring on a jack, a joint open, a mark that was not taken: all are in the state', () => {
    const { from } = planOfJob(
      job(
        ...lifted,
        ['spring', { part: 'coil', wheel, held: 'by a jack under the arm' }],
        ['undone', { joint: 'lower-ball-joint', wheel, to: 'on a few threads' }],
        ['steering', { turned: 'left lock' }],
        ['pedal', { firm: false }],
      ),
      { effort },
    )
    expect(from).toMatchObject({
      [`arm ${wheel}`]: 'jack under',
      [`energy ${wheel} coil`]: 'held by the jack',
      [`joint ${wheel} lower-ball-joint`]: 'retained',
      [`pin ${wheel} lower-ball-joint`]: 'out',
      steering: 'left lock',
      pedal: 'to pump',
    })
  })
  test('SH27 making safe goes on from the log and ends with a tag', () => {
    for (const make of ['safe to stand', 'safe to roll'] as const) {
      const planned = planOfJob(job(...lifted), { effort, goal: { replace: [], make } })
      const actions = Object.values(planned.actions)
      expect(planned.troubles.filter((one) => !one.startsWith('No spec sheet'))).toEqual([])
      expect(actions.at(-1)!.verb).toBe('tag')
      const { faults, state } = judgeOrder(planned.assembly!, { replace: [] }, actions, {
        from: planned.from,
      })
      expect(faults).toEqual([])
      expect(factOf(state, 'part front left wheel')).toBe(make === 'safe to roll' ? 'fitted' : 'off')
    }
  })
  test('SH27 what cannot be is told in a sentence, and nothing is planned', () => {
    const planned = planOfJob(
      job(
        ...lifted,
        ['placed', { part: 'lower-arm', wheel, where: 'off' }],
        ['tightened', { joint: 'lower-front-bolt', wheel, stage: 'final', torque: '100 N·m', hand: 'T' }],
      ),
      { effort },
    )
    expect(planned.plan).toBeNull()
    expect(planned.troubles.join(' ')).toMatch(/told to be off, and its .* to be final: both cannot be/)
  })
})
