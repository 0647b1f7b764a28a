import { expect, test } from 'vitest'
import type { Entry, Job } from '../../../src/job/index.ts'
import { jobLineOf } from '../../../src/sheet/index.ts'
import { finishedJob } from '../../support/finished-job.ts'

const job = (...entries: Entry[]): Job => ({ workshop: 'w', job: '1', entries })
const opened: Entry = {
  kind: 'opened',
  data: { number: '1', vehicle: 'van', complaint: 'drifts', corners: { front: 'f' } },
  at: '2026-03-10T07:00:00Z',
}
const joint = { joint: 'pivot', wheel: 'front left' }
const undone: Entry = { kind: 'undone', data: { ...joint, to: 'open' } }
const final: Entry = { kind: 'tightened', data: { ...joint, stage: 'final', hand: 'T' } }
const held: Entry = {
  kind: 'not road-ready',
  data: { reason: 'no arm to be had', told: 'fleet office', hand: 'T' },
}

test('SH46 a job that was only opened stands at its arrival', () => {
  const line = jobLineOf(job(opened))
  expect(line).toMatchObject({ vehicle: 'van', complaint: 'drifts', stage: 'Arrival', stands: 'At Arrival' })
})

test('SH46 work goes on where it was left: at the refit while a joint is not final, at the angles after it', () => {
  const renewed: Entry = { kind: 'part renewed', data: { part: 'arm', wheels: ['front left'], lot: 'L77' } }
  expect(jobLineOf(job(opened, undone)).stage).toBe('Strip')
  const refit = jobLineOf(job(opened, undone, renewed))
  expect(refit.stage).toBe('Refit')
  expect(refit.lots).toEqual(['L77'])
  expect(jobLineOf(job(opened, undone, renewed, final)).stage).toBe('Angles')
  expect(jobLineOf(job(opened, undone, final, undone)).stage).toBe('Refit')
})

test('SH46 why a job waits comes before where it stands, until it is cleared', () => {
  expect(jobLineOf(job(opened, held)).stands).toBe('Not road-ready: no arm to be had')
  const cleared: Entry = { kind: 'cleared', data: { of: 1, how: 'arm came', hand: 'T' } }
  expect(jobLineOf(job(opened, held, cleared)).stands).toBe('At Arrival')
  const ask: Entry = { kind: 'extra work', data: { what: 'other arm', answer: 'asked' } }
  expect(jobLineOf(job(opened, ask)).stands).toBe('Waits for an answer: other arm')
  const no: Entry = { kind: 'extra work', data: { what: 'other arm', answer: 'no' } }
  expect(jobLineOf(job(opened, ask, no)).stands).not.toContain('Waits')
})

test('SH46 what is due stands with the nearest day first, and goes when it is done', () => {
  const later: Entry = { kind: 'follow-up', data: { what: 'grease', on: '2026-06-01' } }
  const sooner: Entry = { kind: 'follow-up', data: { what: 'wheel nuts again', on: '2026-03-20' } }
  const far: Entry = { kind: 'follow-up', data: { what: 'look again', after: '50 km' } }
  expect(jobLineOf(job(opened, far, later, sooner)).due.map(({ on }) => on)).toEqual([
    '2026-03-20',
    '2026-06-01',
    null,
  ])
  const done: Entry = { kind: 'cleared', data: { of: 1, how: 'done', hand: 'T' } }
  expect(jobLineOf(job(opened, sooner, done)).due).toEqual([])
})

test('SH46 a job with all its stages behind it waits for its sign-off', () => {
  const line = jobLineOf(finishedJob().job)
  expect(line.stages.filter(({ state }) => state === 'done').map(({ stage }) => stage)).toContain('Angles')
  expect(line.stage).toBe('Handover')
})
