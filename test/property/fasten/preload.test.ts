import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  bearingDiameter,
  checkTypedTorque,
  forceLever,
  frictionOf,
  parseThread,
  preloadByNutFactor,
  preloadOf,
  scattered,
  strengthOf,
  threadLoads,
  threadTable,
  tighteningFactor,
  torqueByNutFactor,
  torqueFor,
  turnForPreload,
  yieldPreload,
} from '../../../src/fasten/index.ts'
import { exact, monteCarlo, rectangular, standardUncertainty } from '../../../src/measure/index.ts'
import { lbfFt, metre, mm, Nm, newton, pascal } from '../../../src/quantity/index.ts'
import { law, near, refuses } from '../../support/law.ts'

const anyThread = fc.constantFrom(...threadTable)
const anyMu = fc.double({ min: 0.05, max: 0.35, noNaN: true })
const anyTorque = fc.double({ min: 1, max: 500, noNaN: true })
const m12 = parseThread('M12')
const same = (mu: number) => ({ low: mu, high: mu })

describe('FA1 threads as written', () => {
  law('FA1 every thread of the table is read back from its own designation', anyThread, (thread) => {
    expect(parseThread(thread.designation)).toEqual(thread)
    expect(parseThread(` ${thread.designation.toLowerCase()} `)).toEqual(thread)
    const left = parseThread(`${thread.designation} LH`)
    return left.hand === 'left' && left.pitch === thread.pitch
  })
  law(
    'FA1 root < minor < pitch diameter < diameter, and a finer thread has the larger area',
    anyThread,
    (t) => {
      expect(t.minorDiameter).toBeLessThan(t.pitchDiameter)
      expect(t.pitchDiameter).toBeLessThan(t.diameter)
      if (t.rootDiameter !== null) expect(t.rootDiameter).toBeLessThan(t.minorDiameter)
      for (const other of threadTable)
        if (other.system === t.system && other.diameter === t.diameter && other.pitch < t.pitch)
          expect(other.stressArea).toBeGreaterThan(t.stressArea)
      return true
    },
  )
  test('FA1 the ways people write', () => {
    const pitchOf = (text: string) => parseThread(text).designation
    expect(pitchOf('M16x1.5')).toBe('M16x1.5')
    expect(pitchOf('m16 X 1,5')).toBe('M16x1.5')
    expect(pitchOf('M16 × 1.5 - 6g')).toBe('M16x1.5')
    expect(pitchOf('M12x1.75')).toBe('M12')
    expect(pitchOf('M12-6H')).toBe('M12')
    expect(pitchOf('M12-1.5')).toBe('M12x1.5')
    expect(pitchOf('M6 fine')).toBe('M6x0.75')
    expect(pitchOf('M14x1.5 left')).toBe('M14x1.5 LH')
    expect(pitchOf('1/2-20')).toBe('1/2-20 UNF')
    expect(pitchOf('½-13 UNC')).toBe('1/2-13 UNC')
    expect(pitchOf('7/16 UNF')).toBe('7/16-20 UNF')
    expect(pitchOf('.500-20 UNF-2A')).toBe('1/2-20 UNF')
    expect(pitchOf('1-12 UNF')).toBe('1-12 UNF')
  })
  refuses('ambiguous-thread', () => parseThread('M12 fine'), 'thread')
  refuses('ambiguous-thread', () => parseThread('1/2'), 'thread')
  refuses('unknown-thread', () => parseThread('M12x1.3'), 'thread')
  refuses('unknown-thread', () => parseThread('1/2-13 UNF'), 'thread')
  refuses('unknown-thread', () => parseThread('M26'), 'thread')
  refuses('unknown-thread', () => parseThread('M4'), 'thread')
  refuses('unknown-thread', () => parseThread(''), 'thread')
  refuses('unknown-thread', () => parseThread('12'), 'thread')
})

describe('FA2 classes and grades', () => {
  law('FA2 proof < yield < ultimate, and a stronger class bears more', anyThread, (thread) => {
    const marks = ['4.6', '5.6', '5.8', '6.8', '8.8', '10.9', '12.9']
    const loads = marks.map((mark) => threadLoads(thread, mark))
    for (const load of loads) {
      expect(load.proof).toBeLessThan(load.yield)
      expect(load.yield).toBeLessThan(load.ultimate)
    }
    return loads.every((load, i) => i === 0 || load.proof > loads[i - 1]!.proof)
  })
  test('FA2 8.8 changes above M16, grade 2 above 3/4 in', () => {
    expect(strengthOf('8.8', parseThread('M16')).proof).toBe(580e6)
    expect(strengthOf('class 8.8', parseThread('M18')).proof).toBe(600e6)
    expect(strengthOf('grade 2', parseThread('3/4-10 UNC')).proof).toBeGreaterThan(
      strengthOf('SAE grade 2', parseThread('7/8-9 UNC')).proof,
    )
    expect(strengthOf('grade 5', parseThread('1/4-20 UNC')).mark).toBe('grade 5')
  })
  refuses('unknown-strength', () => strengthOf('8', m12), 'strength')
  refuses('unknown-strength', () => threadLoads(m12, '14.9'), 'strength')
  refuses('unknown-strength', () => strengthOf('9.8', parseThread('M18')), 'strength')
  refuses('unknown-strength', () => strengthOf('grade 5', parseThread('M5')), 'strength')
})

describe('FA3 the long form', () => {
  law(
    'FA3 preload and torque are inverse at known friction',
    fc.tuple(anyThread, anyMu, anyTorque),
    ([thread, mu, t]) => {
      const ring = { low: metre(thread.diameter * 1.3), high: metre(thread.diameter * 1.3) }
      const job = { thread, threadFriction: same(mu), bearing: ring }
      const { preload, low, high } = preloadOf(exact(t), job)
      near(low, high, { rel: 1e-12 })
      return near(torqueFor(newton(preload.value), job).value, t, { rel: 1e-12 })
    },
  )
  law('FA3 without friction the torque lifts a wedge: T = F·P/2π', anyThread, (thread) =>
    near(
      forceLever({ thread, threadFriction: 0, bearingFriction: 0, bearingDiameter: thread.diameter }),
      thread.pitch / (2 * Math.PI),
      { rel: 1e-15 },
    ),
  )
  law('FA3 more friction anywhere, less preload', fc.tuple(anyThread, anyMu, anyMu), ([thread, a, b]) => {
    fc.pre(Math.abs(a - b) > 1e-6)
    const at = (th: number, be: number) =>
      forceLever({ thread, threadFriction: th, bearingFriction: be, bearingDiameter: thread.diameter })
    return (
      at(Math.max(a, b), 0.1) > at(Math.min(a, b), 0.1) && at(0.1, Math.max(a, b)) > at(0.1, Math.min(a, b))
    )
  })
  test('FA3 the ends enclose every draw, and the slopes agree with draws where friction is narrow', () => {
    const job = {
      thread: m12,
      threadFriction: { low: 0.13, high: 0.15 },
      bearing: { low: mm(15), high: mm(16) },
    }
    const torque = rectangular(3.6, 'wrench', 90)
    const { preload, low, high } = preloadOf(torque, job)
    const drawn = monteCarlo(
      ([t, th, b, d]) =>
        t! /
        forceLever({ thread: m12, threadFriction: th!, bearingFriction: b!, bearingDiameter: metre(d!) }),
      [torque, rectangular(0.01, 'th', 0.14), rectangular(0.01, 'b', 0.14), rectangular(0.0005, 'd', 0.0155)],
      { draws: 20_000, seed: 7, coverage: 0.99 },
    )
    near(standardUncertainty(preload), drawn.standardUncertainty, { rel: 0.03 })
    near(preload.value, drawn.mean, { rel: 0.005 })
    // the ends are at the torque itself: its own spread comes on top
    expect(low).toBeLessThan(preload.value)
    expect(high).toBeGreaterThan(preload.value)
    expect(drawn.symmetric.low).toBeGreaterThan(low * (86.4 / 90))
    expect(drawn.symmetric.high).toBeLessThan(high * (93.6 / 90))
  })
  test('FA3 where nobody knows the friction the widest range stands in, and where nobody measured the head both kinds', () => {
    expect(frictionOf(null).low).toBe(frictionOf('oiled').low)
    expect(frictionOf(null).high).toBe(frictionOf('dry').high)
    expect(frictionOf('anti-seize').high).toBeLessThan(frictionOf('locking compound').high)
    const { low, high } = bearingDiameter(mm(12))
    const open = preloadOf(exact(90), { thread: m12 })
    const known = preloadOf(exact(90), {
      thread: m12,
      threadFriction: frictionOf(null),
      bearing: { low, high },
    })
    expect(open).toEqual(known)
  })
  refuses('not-positive', () => preloadOf(exact(0), { thread: m12 }), 'torque')
  refuses('not-positive', () => torqueFor(newton(-1), { thread: m12 }), 'preload')
  refuses('not-finite', () => torqueFor(newton(Number.NaN), { thread: m12 }), 'preload')
  refuses(
    'not-finite',
    () => preloadOf({ value: Number.POSITIVE_INFINITY, parts: [] }, { thread: m12 }),
    'torque',
  )
  refuses(
    'bad-range',
    () => preloadOf(exact(90), { thread: m12, threadFriction: { low: 0.2, high: 0.1 } }),
    'thread friction',
  )
  refuses('not-positive', () =>
    forceLever({ thread: m12, threadFriction: -0.1, bearingFriction: 0, bearingDiameter: mm(15) }),
  )
  refuses('not-positive', () =>
    forceLever({ thread: m12, threadFriction: 0.1, bearingFriction: 0, bearingDiameter: mm(0) }),
  )
  refuses('not-positive', () => bearingDiameter(mm(0)))
})

describe('FA4 the nut factor', () => {
  law(
    'FA4 torque and preload are inverse',
    fc.tuple(anyThread, anyMu, anyTorque),
    ([{ diameter }, factor, torque]) =>
      near(
        torqueByNutFactor({
          factor,
          diameter,
          preload: preloadByNutFactor({ factor, diameter, torque: Nm(torque) }),
        }),
        torque,
        { rel: 1e-12 },
      ),
  )
  refuses(
    'not-positive',
    () => preloadByNutFactor({ factor: 0, diameter: mm(12), torque: Nm(90) }),
    'nut factor',
  )
  refuses('not-finite', () =>
    torqueByNutFactor({ factor: 0.2, diameter: mm(12), preload: newton(Number.NaN) }),
  )
})

describe('FA5 scatter', () => {
  law('FA5 the factor is largest over least', fc.double({ min: 0, max: 0.9, noNaN: true }), (p) =>
    near(tighteningFactor(p) * (1 - p), 1 + p, { rel: 1e-12 }),
  )
  test('FA5 the wrench hardly widens it', () => {
    expect(standardUncertainty(scattered('common torque wrench', 0))).toBeCloseTo(0.3 / Math.sqrt(3), 12)
    expect(scattered('hydraulic', 0.04).value).toBe(1)
  })
  refuses('bad-range', () => tighteningFactor(1), 'scatter')
  refuses('not-positive', () => tighteningFactor(-0.1), 'scatter')
  refuses('not-finite', () => scattered('hydraulic', Number.NaN), 'wrench')
  law('FA5 turn and stretch are proportional', anyTorque, (k) =>
    near(
      turnForPreload({ preload: newton(k), pitch: mm(1.5), boltStiffness: 1e8, partsStiffness: 1e8 }),
      k * turnForPreload({ preload: newton(1), pitch: mm(1.5), boltStiffness: 1e8, partsStiffness: 1e8 }),
      { rel: 1e-12 },
    ),
  )
  refuses('not-positive', () =>
    turnForPreload({ preload: newton(1), pitch: mm(1.5), boltStiffness: 0, partsStiffness: 1e8 }),
  )
})

describe('FA6 stretched and twisted at once', () => {
  law(
    'FA6 without friction hardly any twist; with it always less than pure tension',
    fc.tuple(anyThread, anyMu),
    ([thread, mu]) => {
      const at = (threadFriction: number) =>
        yieldPreload({ thread, yield: pascal(640e6), threadFriction, share: 0.9 })
      return (
        at(mu) < at(0) &&
        at(0) < 0.9 * 640e6 * thread.stressArea &&
        at(0) > 0.9 * 0.9 * 640e6 * thread.stressArea
      )
    },
  )
  refuses(
    'bad-range',
    () => yieldPreload({ thread: m12, yield: pascal(640e6), threadFriction: 0.1, share: 1.1 }),
    'share',
  )
  refuses(
    'not-positive',
    () => yieldPreload({ thread: m12, yield: pascal(640e6), threadFriction: 0.1, share: 0 }),
    'share',
  )
})

describe('FA7 a typed value', () => {
  const at = (torque: number, name: string, strength: string | null) =>
    checkTypedTorque({ torque: Nm(torque), thread: parseThread(name), strength })
  test('FA7 an M6 bracket bolt cannot take 190 N·m, and an M14 wheel stud should not be at 20 N·m', () => {
    expect(() => at(190, 'M6', null)).toThrow()
    expect(at(20, 'M14x1.5', '10.9').verdict).toBe('far too low')
    expect(at(20, 'M14x1.5', null).verdict).toBe('far too low')
    expect(at(110, 'M14x1.5', '10.9').verdict).toBe('plausible')
    expect(at(140, 'M12', '8.8').verdict).toBe('may pass proof')
  })
  law(
    'FA7 the share grows with the torque, in order low, middle, high',
    fc.tuple(anyThread, anyTorque),
    ([thread, t]) => {
      const shareAt = (torque: number) =>
        checkTypedTorque({ torque: Nm(torque), thread, strength: null }).share
      // a torque this small never passes the proof load
      const small = (t / 500) * 1e4 * thread.diameter ** 3 * 1000
      const one = shareAt(small)
      const two = shareAt(2 * small)
      near(two.middle, 2 * one.middle, { rel: 1e-12 })
      return one.low < one.middle && one.middle < one.high
    },
  )
  test('FA7 the edge of refusing is where the stickiest thread reaches its proof load', () => {
    const job = { thread: m12, strength: '8.8' }
    const edge = 1 / (preloadOf(exact(1), { thread: m12 }).low / threadLoads(m12, '8.8').proof)
    expect(checkTypedTorque({ ...job, torque: Nm(edge * 0.9999) }).share.low).toBeLessThan(1)
    expect(() => checkTypedTorque({ ...job, torque: Nm(edge * 1.0001) })).toThrow()
  })
  test('FA7 stating the friction narrows the answer, and it never names another torque', () => {
    const open = at(90, 'M12', '10.9').share
    const known = checkTypedTorque({
      torque: Nm(90),
      thread: m12,
      strength: '10.9',
      threadFriction: frictionOf('oiled'),
    })
    expect(known.share.high - known.share.low).toBeLessThan(open.high - open.low)
    for (const text of [known.sentence, at(20, 'M14x1.5', '10.9').sentence])
      expect(text.match(/N·m/g)).toHaveLength(1)
    expect(
      checkTypedTorque({
        torque: lbfFt(75),
        thread: parseThread('1/2-20 UNF'),
        strength: 'grade 8',
        unit: 'lbf·ft',
      }).sentence,
    ).toContain('75 lbf·ft on 1/2-20 UNF, grade 8')
  })
  refuses('above-proof', () => at(190, 'M6', '8.8'), 'torque')
  refuses('above-proof', () => at(190, 'M6', null), 'torque')
  refuses('not-positive', () => at(0, 'M6', null), 'torque')
  refuses('not-positive', () => at(-0, 'M6', null), 'torque')
  refuses('not-finite', () => at(Number.NaN, 'M6', null), 'torque')
  refuses('unknown-strength', () => at(10, 'M6', '8'))
})
