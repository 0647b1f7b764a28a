import { describe, expect, test } from 'vitest'
import type { Entry } from '../../../src/job/index.ts'
import { readKit } from '../../../src/kit/index.ts'
import { type Sheet, type SheetSources, sheetFrom } from '../../../src/sheet/index.ts'
import { demoSources } from '../../support/demo-sources.ts'
import { demo } from '../corner/demo.ts'

const bus = demoSources('07')
const kitFile = demo('port-kit.kit.json') as Record<string, unknown>
const entry = (kind: string, data: Record<string, unknown>): Entry => ({ kind, data })
const play = (joint: string, swings: readonly string[], more: Record<string, unknown> = {}) =>
  entry('play', {
    joint,
    wheel: 'front right',
    direction: 'up and down',
    gauge: 'dial',
    moves: 'camber',
    swings,
    arm: '318 mm',
    ...more,
  })
function wear(log: readonly Entry[], more: Partial<SheetSources> = {}, options = {}): Sheet {
  return sheetFrom({ ...bus, ...more, job: { ...bus.job, entries: log } }, options)
}
const withKit = (thresholds: Record<string, unknown>) => {
  const kit = readKit({ ...kitFile, thresholds })
  if (!kit.ok) throw new Error(JSON.stringify(kit.problems))
  return { kit: kit.value }
}
const ball = 'lower-ball-joint'

describe('SH19 play is held against its limit, and the dial’s spread is in the verdict', () => {
  test('SH19 the demo bus: past the limit before the work, inside after it', () => {
    const [before, after] = sheetFrom(bus).wear
    // Spec sheet of the invented demo: 1.5 mm; read 1.91, 1.88, 1.90 mm, later 0.04, 0.05 mm.
    expect(before).toMatchObject({ joint: ball, verdict: 'outside', since: 'renewed', wheel: 'front right' })
    expect(before!.play.value).toBeCloseTo(0.001897, 5)
    expect(before!.sentence).toContain('Renewed since')
    expect(before!.limits[0]).toMatchObject({ text: '1.50 mm', whose: 'not said' })
    expect(after).toMatchObject({ verdict: 'inside', since: null })
  })

  test('SH19 near its limit nothing is proven; the spread is that of the dial', () => {
    const [row] = wear([play(ball, ['1.52 mm'])]).wear
    expect(row!.verdict).toBe('outside, not proven')
    expect(row!.probability).toBeGreaterThan(0.05)
    expect(row!.probability).toBeLessThan(0.5)
    // Dial of the kit: 0.02 mm of its own, 0.03 mm each time it is set up, steps of 0.01 mm, half-widths all.
    const u = Math.sqrt((0.02 ** 2 + 0.03 ** 2 + 0.005 ** 2) / 3)
    expect((row!.play.high - row!.play.low) / 2).toBeGreaterThan(1.5 * u * 1e-3)
    expect((row!.play.high - row!.play.low) / 2).toBeLessThan(2.2 * u * 1e-3)
    expect(row!.sentence).toContain('Not proven either way')
  })

  test('SH19 the workshop’s own limit goes before the sheet’s; without one there is none', () => {
    const own = withKit({
      wear: [
        {
          what: 'any ball joint',
          jointKind: 'tapered stud, castle nut',
          limit: '0.5 mm',
          source: 'the yard’s own',
        },
      ],
    })
    const [row] = wear([play(ball, ['1.00 mm'])], own).wear
    expect(row!.limits.map(({ whose }) => whose)).toEqual(['the workshop', 'not said'])
    expect(row!.verdict).toBe('outside')
    expect(wear([play(ball, ['1.00 mm'])]).wear[0]!.verdict).toBe('inside')
    const none = wear([play('damper-bottom-bolt', ['1.00 mm'])]).wear[0]!
    expect(none).toMatchObject({ verdict: 'no limit', probability: null, limits: [] })
    expect(none.sentence).toContain('none is made up')
  })

  test('SH19 public rules speak where the kit says whose apply, in their own measure', () => {
    const us = withKit({ jurisdiction: 'US' })
    const rod = (swing: string) =>
      wear([play('tie-rod-end', [swing], { moves: 'toe', direction: 'in and out' })], us).wear[0]!
    // 49 CFR 570.7(b): not more than 1/4 in at the tread; the tyre's radius of 331 mm against a dial at 318 mm.
    expect(rod('5.5 mm').verdict).toBe('inside')
    expect(rod('6.5 mm').verdict).toBe('outside')
    // 6.2 mm at the dial is 6.45 mm at the tread: past 6.35 mm only there.
    expect(rod('6.2 mm').verdict).toBe('outside')
    expect(rod('6.5 mm').limits[0]).toMatchObject({ whose: 'the inspection', jurisdiction: 'US' })
    expect(rod('6.5 mm').limits[0]!.source).toContain('49 CFR 570')
    // A rule in words has no number and decides nothing by itself.
    const upper = wear([play('upper-ball-joint', ['3 mm'])], us).wear[0]!
    expect(upper.verdict).toBe('no limit')
    expect(wear([play('tie-rod-end', ['6.5 mm'], { moves: 'toe' })]).wear[0]!.limits).toEqual([])
  })

  test('SH19 read again, renewed, without a dial: each is said', () => {
    const rows = wear([play(ball, ['2 mm']), play(ball, ['0.1 mm'])]).wear
    expect(rows.map(({ since }) => since)).toEqual(['read again', null])
    const renewed = entry('part renewed', { part: 'lower-arm', wheels: ['front left'] })
    expect(wear([play(ball, ['2 mm']), renewed]).wear[0]!.since).toBeNull()
    const without = wear([play(ball, ['2 mm'], { gauge: 'other-dial' })])
    expect(without.wear).toEqual([])
    expect(without.troubles.join(' ')).toContain('Play of the lower ball joint, front right')
  })

  test('SH19 lengths are in the person’s units', () => {
    const units = {
      length: 'in',
      angle: '°',
      torque: 'lbf·ft',
      pressure: 'psi',
      mass: 'lb',
      distance: 'mi',
      stiffness: 'lbf·in/°',
    }
    const [row] = wear([play(ball, ['1.00 mm'])], {}, { units }).wear
    expect(row!.play.text).toMatch(/in$/)
    expect(row!.limits[0]!.text).toBe('0.059 in')
  })
})
