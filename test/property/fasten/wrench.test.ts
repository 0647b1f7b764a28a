import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  checkWrench,
  onScale,
  rankWrenches,
  torqueReceived,
  torqueThrough,
  wrenchDeviation,
  wrenchSetting,
} from '../../../src/fasten/index.ts'
import {
  budget,
  halfWidth,
  monteCarlo,
  rectangular,
  resolution,
  standardUncertainty,
} from '../../../src/measure/index.ts'
import { deg, lbfFt, metre, mm, Nm, rad } from '../../../src/quantity/index.ts'
import { footWrench, longWrench, openEnd, shortWrench } from '../../support/fasten-examples.ts'
import { law, near, refuses } from '../../support/law.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const anyAdapter = fc
  .tuple(between(1, 500), between(0.15, 1.2), between(0, 0.14), between(-Math.PI, Math.PI))
  .map(([t, reach, offset, angle]) => ({
    torque: Nm(t),
    reach: metre(reach),
    offset: metre(offset),
    angle: rad(angle),
  }))
const today = '2026-11-25'

describe('FA8 adapters', () => {
  law('FA8 square adapter changes nothing', anyAdapter, (a) =>
    near(wrenchSetting({ ...a, angle: deg(90) }), a.torque, { rel: 1e-12 }),
  )
  law('FA8 no offset changes nothing, at any angle', anyAdapter, (a) =>
    near(wrenchSetting({ ...a, offset: mm(0) }), a.torque, { rel: 1e-15 }),
  )
  law('FA8 setting and torque are inverse', anyAdapter, ({ torque, ...lever }) =>
    near(torqueThrough({ ...lever, setting: wrenchSetting({ torque, ...lever }) }), torque, { rel: 1e-12 }),
  )
  law('FA8 ahead is set lower, back higher; left and right of the wrench alike', anyAdapter, (a) => {
    fc.pre(a.offset > 1e-6 && Math.abs(Math.cos(a.angle)) > 1e-6)
    near(wrenchSetting({ ...a, angle: rad(-a.angle) }), wrenchSetting(a), { rel: 1e-15 })
    return Math.cos(a.angle) > 0 ? wrenchSetting(a) < a.torque : wrenchSetting(a) > a.torque
  })
  law('FA8 moments about the fastener: hand force × whole lever', anyAdapter, (a) => {
    // the force that makes the wrench give way, and its moment about a fastener placed by hand
    const force = wrenchSetting(a) / a.reach
    const fastener = [a.offset * Math.cos(a.angle), a.offset * Math.sin(a.angle)] as const
    const grip = [-a.reach, 0] as const
    const moment = (grip[0] - fastener[0]) * -force - (grip[1] - fastener[1]) * 0
    return near(moment, a.torque, { rel: 1e-12 })
  })
  test('FA8 taken the wrong way round the fastener receives ((L + a)/L)² of it: 17 % too much with 40 on 500 mm', () => {
    const lever = { reach: mm(500), offset: mm(40), angle: deg(0) }
    const wrong = Nm((100 * 540) / 500)
    near(torqueThrough({ setting: wrong, ...lever }), 116.64, { abs: 1e-9 })
    near(torqueThrough({ setting: wrenchSetting({ torque: Nm(100), ...lever }), ...lever }), 100, {
      rel: 1e-12,
    })
  })
  refuses('no-lever', () =>
    torqueThrough({ setting: Nm(80), reach: mm(100), offset: mm(120), angle: deg(170) }),
  )
  refuses(
    'not-positive',
    () => wrenchSetting({ torque: Nm(0), reach: mm(400), offset: mm(50), angle: deg(0) }),
    'torque',
  )
  refuses('not-positive', () =>
    wrenchSetting({ torque: Nm(-0), reach: mm(400), offset: mm(50), angle: deg(0) }),
  )
  refuses(
    'not-positive',
    () => wrenchSetting({ torque: Nm(80), reach: mm(0), offset: mm(50), angle: deg(0) }),
    'reach',
  )
  refuses(
    'not-positive',
    () => wrenchSetting({ torque: Nm(80), reach: mm(400), offset: mm(-1), angle: deg(0) }),
    'offset',
  )
  refuses(
    'not-finite',
    () => wrenchSetting({ torque: Nm(80), reach: mm(400), offset: mm(50), angle: rad(Number.NaN) }),
    'angle',
  )
  refuses('not-finite', () =>
    wrenchSetting({ torque: Nm(Number.POSITIVE_INFINITY), reach: mm(400), offset: mm(50), angle: deg(0) }),
  )
})

describe('FA9 on the scale', () => {
  const scale = { low: Nm(40), high: Nm(200), step: Nm(2.5) }
  const anySetting = between(40, 200)
  law('FA9 a mark of the scale, at most half a step off', anySetting, (setting) => {
    const mark = onScale({ setting: Nm(setting), scale })
    const steps = (mark - scale.low) / scale.step
    near(steps, Math.round(steps), { abs: 1e-9 })
    return Math.abs(mark - setting) <= scale.step / 2 + 1e-9
  })
  law(
    'FA9 never above the ceiling, never below the floor',
    fc.tuple(anySetting, between(0, 20), between(0, 20)),
    ([setting, down, up]) => {
      const floor = Nm(Math.max(40, setting - down))
      const ceiling = Nm(setting + up)
      try {
        const mark = onScale({ setting: Nm(setting), scale, floor, ceiling })
        return mark <= ceiling + 1e-8 && mark >= floor - 1e-8 && mark <= 200 && mark >= 40
      } catch (refusal) {
        expect(refusal).toMatchObject({ code: 'no-mark' })
        return up + down < scale.step
      }
    },
  )
  law('FA9 a mark stays where it is', fc.integer({ min: 0, max: 64 }), (i) => {
    const mark = Nm(40 + 2.5 * i)
    return onScale({ setting: mark, scale, floor: mark, ceiling: mark }) === mark
  })
  test('FA9 halfway goes down; marks of another unit stay marks', () => {
    expect(onScale({ setting: Nm(51.25), scale })).toBe(50)
    near(onScale({ setting: lbfFt(75), scale: footWrench.scale, unit: 'lbf·ft' }), lbfFt(74), { rel: 1e-12 })
    near(onScale({ setting: lbfFt(75.2), scale: footWrench.scale }), lbfFt(76), { rel: 1e-12 })
  })
  refuses('outside-range', () => onScale({ setting: Nm(39.9), scale }), 'wrench')
  refuses('outside-range', () => onScale({ setting: Nm(200.1), scale }), 'wrench')
  refuses('no-mark', () => onScale({ setting: Nm(51), scale, floor: Nm(50.5), ceiling: Nm(52) }), 'wrench')
  refuses('not-positive', () => onScale({ setting: Nm(51), scale: { ...scale, step: Nm(0) } }), 'step')
  refuses('not-finite', () => onScale({ setting: Nm(Number.NaN), scale }), 'setting')
  test('FA9 both ends of the range are in it', () => {
    expect(onScale({ setting: Nm(40), scale })).toBe(40)
    expect(onScale({ setting: Nm(200), scale })).toBe(200)
  })
})

describe('FA10 a wrench that may be used', () => {
  test('FA10 good until its last day, the day itself included', () => {
    const wrench = longWrench
    expect(checkWrench({ wrench, setting: Nm(100), today: '2027-03-31' })).toEqual([])
    expect(checkWrench({ wrench, setting: Nm(40), today })).toEqual([])
    expect(
      checkWrench({ wrench: { ...wrench, scale: { ...wrench.scale, low: Nm(20) } }, setting: Nm(39), today }),
    ).toHaveLength(1)
    expect(checkWrench({ wrench, setting: Nm(100), today: '2027-04-01', uncalibrated: 'warn' })).toHaveLength(
      1,
    )
    expect(
      checkWrench({
        wrench: { ...wrench, calibratedUntil: null },
        setting: Nm(100),
        today,
        uncalibrated: 'warn',
      }),
    ).toHaveLength(1)
  })
  refuses(
    'not-calibrated',
    () => checkWrench({ wrench: longWrench, setting: Nm(100), today: '2027-04-01' }),
    'wrench',
  )
  refuses('not-calibrated', () =>
    checkWrench({ wrench: { ...longWrench, calibratedUntil: null }, setting: Nm(100), today }),
  )
  refuses('outside-range', () => checkWrench({ wrench: longWrench, setting: Nm(39), today }), 'wrench')
  refuses(
    'outside-range',
    () => checkWrench({ wrench: longWrench, setting: Nm(201), today, uncalibrated: 'warn' }),
    'wrench',
  )
  refuses('not-finite', () => checkWrench({ wrench: longWrench, setting: Nm(Number.NaN), today }), 'setting')
  refuses(
    'bad-date',
    () => checkWrench({ wrench: longWrench, setting: Nm(100), today: '25.11.2026' }),
    'today',
  )
  refuses(
    'bad-date',
    () => checkWrench({ wrench: { ...longWrench, calibratedUntil: '2026-13-01' }, setting: Nm(100), today }),
    'calibratedUntil',
  )
  refuses('not-positive', () => wrenchDeviation('II A', Nm(0)))
  refuses('not-finite', () => wrenchDeviation('II A', Nm(Number.NaN)))
})

describe('FA11 what the fastener receives', () => {
  test('FA11 with a socket on the drive only deviation and scale count', () => {
    const received = torqueReceived({ wrench: longWrench, adapter: null, setting: Nm(100) })
    expect(received.value).toBe(100)
    near(standardUncertainty(received), Math.sqrt((4 ** 2 + 0.5 ** 2) / 3), { rel: 1e-12 })
    const certified = torqueReceived({
      wrench: { ...longWrench, deviation: 0.01 },
      adapter: null,
      setting: Nm(100),
    })
    near(standardUncertainty(certified), Math.sqrt((1 ** 2 + 0.5 ** 2) / 3), { rel: 1e-12 })
  })
  law(
    'FA11 the slopes agree with draws at every angle',
    between(-Math.PI, Math.PI),
    (angle) => {
      const adapter = { ...openEnd, angle: rad(angle), offset: mm(60), angleSpread: deg(3) }
      const received = torqueReceived({ wrench: longWrench, adapter, setting: Nm(100) })
      const drawn = monteCarlo(
        ([s, q, reach, offset, at]) =>
          torqueThrough({
            setting: Nm(s! + q!),
            reach: metre(reach!),
            offset: metre(offset!),
            angle: rad(at!),
          }),
        [
          rectangular(4, 'deviation', 100),
          resolution(1, 'scale'),
          rectangular(0.02, 'hand', 0.5),
          rectangular(0.0005, 'offset', 0.06),
          rectangular(deg(3), 'angle', angle),
        ],
        { draws: 4000, seed: 3 },
      )
      near(received.value, drawn.mean, { rel: 0.002 })
      return near(standardUncertainty(received), drawn.standardUncertainty, { rel: 0.05 })
    },
    { runs: 20 },
  )
  test('FA11 straight ahead the hand counts, square the angle does', () => {
    const partOf = (angle: number, source: string) =>
      budget(
        torqueReceived({ wrench: longWrench, adapter: { ...openEnd, angle: deg(angle) }, setting: Nm(100) }),
      ).find((line) => line.source === source)?.share ?? 0
    expect(partOf(0, 'hand on the grip of wrench 2')).toBeGreaterThan(0)
    expect(partOf(90, 'hand on the grip of wrench 2')).toBeLessThan(1e-12)
    expect(partOf(90, 'angle of the 40 mm adapter')).toBeGreaterThan(partOf(0, 'angle of the 40 mm adapter'))
  })
  refuses(
    'not-positive',
    () => torqueReceived({ wrench: longWrench, adapter: null, setting: Nm(0) }),
    'setting',
  )
  refuses('not-finite', () => torqueReceived({ wrench: longWrench, adapter: null, setting: Nm(Number.NaN) }))
  refuses('no-lever', () =>
    torqueReceived({
      wrench: longWrench,
      adapter: { ...openEnd, offset: mm(500), angle: deg(180) },
      setting: Nm(100),
    }),
  )
})

describe('FA12 which wrench', () => {
  const question = {
    torque: Nm(45),
    wrenches: [longWrench, shortWrench, footWrench],
    adapters: [openEnd, null],
    today,
  }
  test('FA12 the least it can be off by comes first; the rest with its reason', () => {
    const { fit, unfit } = rankWrenches(question)
    expect(fit.map(({ wrench, adapter }) => [wrench.name, adapter?.name ?? null])[0]).toEqual([
      'wrench 1',
      null,
    ])
    for (const [i, one] of fit.entries()) {
      if (i > 0) expect(one.off).toBeGreaterThanOrEqual(fit[i - 1]!.off)
      near(one.off, (halfWidth(one.received) + Math.abs(one.received.value - 45)) / 45, { rel: 1e-12 })
    }
    expect(fit.length + unfit.length).toBe(6)
    const none = rankWrenches({ ...question, torque: Nm(400) })
    expect(none.fit).toEqual([])
    for (const { refusal } of none.unfit) expect(refusal.code).toBe('outside-range')
    const late = rankWrenches({ ...question, today: '2030-01-01' })
    for (const { refusal } of late.unfit) expect(['not-calibrated', 'outside-range']).toContain(refusal.code)
    expect(late.fit).toEqual([])
    expect(
      rankWrenches({ ...question, today: '2030-01-01', uncalibrated: 'warn' }).fit[0]!.warnings,
    ).toHaveLength(1)
  })
  law(
    'FA12 within floor and ceiling at the fastener, whatever the adapter',
    fc.tuple(between(50, 150), between(0, Math.PI)),
    ([t, angle]) => {
      const { fit } = rankWrenches({
        ...question,
        torque: Nm(t),
        floor: Nm(t * 0.97),
        ceiling: Nm(t * 1.03),
        adapters: [{ ...openEnd, angle: rad(angle) }],
      })
      return fit.every(
        ({ received }) => received.value >= t * 0.97 - 1e-9 && received.value <= t * 1.03 + 1e-9,
      )
    },
  )
  test('FA12 a finer certificate moves a wrench forward', () => {
    const better = { ...longWrench, name: 'wrench 4', deviation: 0.01 }
    const { fit } = rankWrenches({
      ...question,
      torque: Nm(100),
      wrenches: [longWrench, better],
      adapters: [null],
    })
    expect(fit[0]!.wrench.name).toBe('wrench 4')
  })
  refuses('not-positive', () => rankWrenches({ ...question, torque: Nm(0) }), 'torque')
  refuses('not-finite', () => rankWrenches({ ...question, torque: Nm(Number.NaN) }), 'torque')
  refuses(
    'bad-range',
    () => rankWrenches({ ...question, floor: Nm(50), ceiling: Nm(40) }),
    'floor and ceiling',
  )
})
