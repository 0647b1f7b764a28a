import { describe, expect, test } from 'vitest'
import { withCorrection } from '../../../src/job/index.ts'
import { interval } from '../../../src/measure/index.ts'
import { type Sheet, type SheetSources, sheetFrom } from '../../../src/sheet/index.ts'
import { demoSources } from '../../support/demo-sources.ts'

const row = (sheet: Sheet, name: string) => {
  const found = sheet.readings.find((reading) => reading.name === name)
  if (!found) throw new Error(`no row ${name}; there are ${sheet.readings.map((r) => r.name).join(', ')}`)
  return found
}

const without = (sources: SheetSources, drop: (kind: string, i: number) => boolean): SheetSources => ({
  ...sources,
  job: { ...sources.job, entries: sources.job.entries.filter(({ kind }, i) => !drop(kind, i)) },
})

describe.each(['07', '12'] as const)('demo job of port unit %s', (unit) => {
  const sources = demoSources(unit)
  const sheet = sheetFrom(sources)

  test('SH1 same sources, same sheet; the log stays as it was', () => {
    const before = JSON.stringify(sources.job)
    expect(sheetFrom(sources)).toEqual(sheet)
    expect(JSON.stringify(sources.job)).toBe(before)
  })

  test('SH2 value within its interval, verdict by probability', () => {
    expect(sheet.readings.length).toBeGreaterThan(10)
    for (const r of sheet.readings) {
      expect(r.low).toBeLessThan(r.value)
      expect(r.high).toBeGreaterThan(r.value)
      const p = r.probability
      if (p === null) expect(r.verdict).toBe('no limit')
      else if (p >= sheet.threshold) expect(r.verdict).toBe('inside')
      else if (p <= 1 - sheet.threshold) expect(r.verdict).toBe('outside')
      else expect(r.verdict).toMatch(/not proven$/)
      expect(r.text).not.toMatch(/[+−]0(\.0+)?°/)
    }
  })

  test('SH5 cross camber is left minus right, its floor counted once', () => {
    const [l, r] = [row(sheet, 'front left camber'), row(sheet, 'front right camber')]
    const cross = row(sheet, 'front cross camber')
    expect(cross.value).toBeCloseTo(l.value - r.value, 12)
    // the gauge's scale and zero are common to both wheels and cancel, so the difference is surer than both together
    const apart = Math.hypot(l.high - l.low, r.high - r.low)
    expect(cross.high - cross.low).toBeLessThan(apart)
  })

  test('SH8 a right corner is drawn on the right', () => {
    const y = (side: string) => sheet.corners.find((c) => c.side === side)!.ride.wheel.centre[1]
    expect(y('left')).toBeGreaterThan(0.5)
    expect(y('right')).toBe(-y('left'))
  })

  test('the sheet survives being sent: it is plain data', () => {
    expect(JSON.parse(JSON.stringify(sheet))).toEqual(sheet)
  })
})

describe('port unit 07', () => {
  const sources = demoSources('07')
  const sheet = sheetFrom(sources)

  test('moves are advised, toe last, and they land inside more surely than before', () => {
    expect(sheet.moves.moves.length).toBeGreaterThan(0)
    expect(sheet.moves.insideAfter).toBeGreaterThan(Math.max(0.8, sheet.moves.insideNow!))
    const kinds = sheet.moves.moves.map((m) => m.kind)
    expect(kinds.lastIndexOf('eccentric')).toBeLessThan(kinds.indexOf('thread'))
  })

  test('both eccentrics of a wheel open the reach map, though one changes toe most', () => {
    for (const { outline } of sheet.reach) {
      const area = outline.reduce((sum, [x, y], i) => {
        const [u, v] = outline[(i + 1) % outline.length]!
        return sum + (x * v - u * y) / 2
      }, 0)
      // more than half a degree of camber by half a degree of caster
      expect(Math.abs(area)).toBeGreaterThan(((0.5 * Math.PI) / 180) ** 2)
    }
    for (const move of sheet.moves.moves) expect(move.looks).toMatch(/clockwise/)
  })

  test('SH4 a correction changes what it touches and no others', () => {
    const camber = row(sheet, 'front left camber')
    const [input] = camber.inputs
    const changed = withCorrection(sources.job, { ...input!, text: '-0.80°' })
    if (!changed.ok) throw new Error(JSON.stringify(changed.problems))
    const after = sheetFrom({ ...sources, job: changed.value })
    expect(row(after, 'front left camber').value).toBeLessThan(camber.value - 0.003)
    expect(row(after, 'front right camber').value).toBe(row(sheet, 'front right camber').value)
    expect(row(after, 'front total toe').value).toBe(row(sheet, 'front total toe').value)
  })

  test('SH6 play widens the camber read through it until its arm is renewed', () => {
    const second = sources.job.entries.findIndex((e) => e.kind === 'round' && e.data['number'] === 2)
    const firstRound: SheetSources = {
      ...sources,
      job: { ...sources.job, entries: sources.job.entries.slice(0, second) },
    }
    const spread = (s: Sheet, name: string) => row(s, name).high - row(s, name).low
    const before = sheetFrom(without(firstRound, (kind) => kind === 'part renewed'))
    expect(spread(before, 'front right camber')).toBeGreaterThan(1.3 * spread(before, 'front left camber'))
    expect(spread(sheet, 'front right camber')).toBeCloseTo(spread(sheet, 'front left camber'), 4)
  })

  test('SH3 a kit that lacks a gauge costs the readings made with it, in plain words', () => {
    const { 'turn-plates': _, ...gauges } = sources.kit!.gauges
    const poorer = sheetFrom({ ...sources, kit: { ...sources.kit!, gauges } })
    expect(poorer.troubles.join(' ')).toMatch(/turn.plates/i)
    expect(poorer.readings.some((r) => r.name === 'front left caster')).toBe(false)
    expect(row(poorer, 'front left camber').value).toBe(row(sheet, 'front left camber').value)
  })

  test('SH3 no sheet of limits, no kit, no readings: still a sheet that says what to do', () => {
    expect(sheetFrom({ ...sources, spec: null }).readings.every((r) => r.verdict === 'no limit')).toBe(true)
    expect(sheetFrom({ ...sources, kit: null }).troubles.length).toBeGreaterThan(0)
    const empty = sheetFrom(without(sources, (kind) => kind === 'reading'))
    expect(empty.readings).toEqual([])
    expect(empty.next.sentence).toMatch(/read/)
  })

  test('SH3 a height at which the wheel cannot stand costs the moves, and is told, not blamed on a part', () => {
    const second = sources.job.entries.findLastIndex(
      (e) => e.kind === 'ride height' && e.data['wheel'] === 'front left' && e.data['when'] === 'settled',
    )
    const changed = withCorrection(sources.job, { entry: second, path: 'readings[0]', text: '1442 mm' })
    if (!changed.ok) throw new Error(JSON.stringify(changed.problems))
    const after = sheetFrom({ ...sources, job: changed.value })
    expect(after.troubles.join(' ')).toMatch(
      /front left wheel stands at 1442 mm by the log.*370 mm to 518 mm.*correct/,
    )
    expect(after.moves.moves).toEqual([])
    expect(after.moves.outOfReach).toEqual([])
    expect(after.next.sentence).toMatch(/^No moves: the corner model cannot stand/)
    expect(row(after, 'front right camber').value).toBeCloseTo(row(sheet, 'front right camber').value, 12)
  })

  test('SH3 a name that leads nowhere in the corner is told', () => {
    const entries = sources.job.entries.map((e) =>
      e.kind === 'as found' && e.data['adjuster'] === 'lower-rear-eccentric'
        ? { ...e, data: { ...e.data, adjuster: 'lower-rear-eccentrc' } }
        : e,
    )
    const after = sheetFrom({ ...sources, job: { ...sources.job, entries } })
    expect(after.troubles.join(' ')).toMatch(
      /no adjuster "lower-rear-eccentrc"\. Right would be "lower-rear-eccentric"/,
    )
    expect(sheet.troubles).toEqual([])
  })

  test("the workshop's own threshold decides what counts as proven", () => {
    const kit = { ...sources.kit!, thresholds: { inside: { value: 0.99, text: '99 %' } } }
    const strict = sheetFrom({ ...sources, kit })
    expect(strict.threshold).toBe(0.99)
    expect(strict.readings.every((r) => r.verdict !== 'inside' || r.probability! >= 0.99)).toBe(true)
    expect(sheetFrom({ ...sources, kit }, { threshold: 0.9 }).threshold).toBe(0.9)
  })

  test('SH12 a slip in the strings is told before anyone looks for a part', () => {
    const strings = sources.job.entries.findLastIndex(
      (e) => e.kind === 'reading' && e.data['method'] === 'strings and rule',
    )
    for (const [path, text, told] of [
      ['wheelbase', '2000 mm', /wheelbase of 2000 mm, the spec sheet/],
      ['wheels.front left.span', '40 mm', /front left wheel the measuring points are 40 mm apart/],
      ['hubs.rear right', '880 mm', /right string stands \d+ mm from the front hub and 880 mm from the rear/],
    ] as const) {
      const typed = withCorrection(sources.job, { entry: strings, path, text })
      if (!typed.ok) throw new Error(JSON.stringify(typed.problems))
      expect(sheetFrom({ ...sources, job: typed.value }).troubles.join(' ')).toMatch(told)
    }
    expect(sheet.troubles).toEqual([])
  })

  test('SH10 a method that is too rough for the limits says so, wherever the reading lies', () => {
    const tight = structuredClone(sources.spec!) as {
      limits: Record<string, { low: unknown; high: unknown }>
    }
    tight.limits['front caster'] = {
      ...tight.limits['front caster'],
      low: { value: 0.05, text: '2.86°' },
      high: { value: 0.052, text: '2.98°' },
    }
    const strict = sheetFrom({ ...sources, spec: tight as unknown as NonNullable<SheetSources['spec']> })
    expect(row(strict, 'front left caster').provable).toBe(false)
    expect(strict.advice.join(' ')).toMatch(/Too rough for its limits.*caster, left front/)
    expect(sheet.readings.every((r) => r.provable)).toBe(true)
  })

  test('SH7 moves turned after the readings ask for a new reading', () => {
    const entries = sheet.moves.moves.map((m) => ({
      kind: 'moved',
      data: {
        adjuster: m.adjuster,
        wheel: `front ${m.side}`,
        by: m.kind === 'thread' ? `${m.to - m.from} turns` : `${((m.to - m.from) * 180) / Math.PI}°`,
      },
    }))
    const turned = { ...sources, job: { ...sources.job, entries: [...sources.job.entries, ...entries] } }
    expect(sheetFrom(turned).next.button).toBe('Read again')
    expect(sheetFrom(turned).next.sentence).not.toBe(sheet.next.sentence)
    expect(sheet.moves.made).toBe(false)
    expect(sheetFrom(turned).moves.made).toBe(true)
    expect(sheetFrom(turned).cautions.join(' ')).toMatch(/Toe is not set/)
  })

  test('SH11 a proving round in which one gauge was read proves nothing, and toe not read again is not set', () => {
    const index = sources.job.entries.findLastIndex(
      (e) => e.kind === 'reading' && e.data['wheel'] === 'front left',
    )
    const entries = [
      ...sources.job.entries,
      { kind: 'moved', data: { adjuster: 'tie-rod', wheel: 'front left', by: '1/12 turn' } },
      { kind: 'round', data: { number: 3, purpose: 'proving', settled: true } },
      sources.job.entries[index]!,
    ]
    const after = sheetFrom({ ...sources, job: { ...sources.job, entries } })
    expect(after.readings.map((r) => r.verdict)).toEqual(['inside'])
    expect(after.next.sentence).toMatch(
      /^What was read is inside\. Not read in this round: .*toe, total, front/,
    )
    expect(after.next.button).toBe('Read again')
    expect(after.unread).toContain('caster, right front')
    expect(after.cautions.join(' ')).toMatch(/Toe is not set/)
    expect(sheet.unread).toEqual([])
  })

  test('SH3 a floor that the kit does not have, and a wheel that hangs where it cannot, are told', () => {
    const changed = sources.job.entries.map((e) =>
      e.kind === 'floor'
        ? { ...e, data: { ...e.data, bay: 'bay-3' } }
        : e.kind === 'ride height' && e.data['when'] === 'hanging' && e.data['wheel'] === 'front left'
          ? { ...e, data: { ...e.data, readings: ['917 mm'] } }
          : e,
    )
    const after = sheetFrom({ ...sources, job: { ...sources.job, entries: changed } })
    expect(after.troubles.join(' ')).toMatch(/no floor map "bay-3"\. Right would be "bay-2"/)
    expect(after.troubles.join(' ')).toMatch(/front left wheel hangs at 917 mm by the log/)
    expect(after.troubles.length).toBe(2)
    expect(after.clamp.map(({ side }) => side)).toEqual(['right'])
  })

  test('SH9 a move that did less than the points say is trusted with less next time; one across a new part teaches nothing', () => {
    // the eccentric was turned and every reading stayed: on this vehicle it does less than its points say
    const second = sources.job.entries.findIndex((e) => e.kind === 'round' && e.data['number'] === 2)
    const again = sources.job.entries.slice(second + 1).filter((e) => e.kind === 'reading')
    const moved = {
      kind: 'moved',
      data: { adjuster: 'lower-front-eccentric', wheel: 'front right', by: '15°' },
    }
    const round = { kind: 'round', data: { number: 3, purpose: 'provisional', settled: true } }
    const renewed = { kind: 'part renewed', data: { part: 'lower-arm', wheels: ['front right'] } }
    // points that stand for the layout only: then a recorded move has much to teach
    const { front } = sources.corners
    const vague = Object.entries(front.points).map(([name, point]) => [name, { ...point, spread: 0.015 }])
    const corners = { ...sources.corners, front: { ...front, points: Object.fromEntries(vague) } }
    const perStroke = (extra: readonly (typeof renewed)[]) => {
      const entries = [...sources.job.entries, moved, ...extra, round, ...again]
      const made = sheetFrom({ ...sources, corners, job: { ...sources.job, entries } })
      const turned = made.moves.moves.find(
        (m) => m.side === 'right' && m.adjuster === 'lower-front-eccentric',
      )
      if (!turned) throw new Error('the right front eccentric should be turned')
      const camber = row(made, 'front right camber')
      return Math.abs(
        (camber.predicted!.value - camber.value) / (Math.sin(turned.to) - Math.sin(turned.from)),
      )
    }
    expect(perStroke([])).toBeLessThan(0.8 * perStroke([renewed]))
  })

  test('intervals of the sheet are those of the measured values, not of the rounded text', () => {
    const r = row(sheet, 'thrust')
    const half = (r.high - r.low) / 2
    expect(interval({ value: 0, parts: [] }).high).toBe(0)
    expect(
      Math.abs(Number.parseFloat(r.spread.replace(/[^\d.]/g, '')) - (half * 180) / Math.PI),
    ).toBeLessThan(0.0051)
  })
})

describe('port unit 12', () => {
  const sheet = sheetFrom(demoSources('12'))
  test('a bent strut is out of reach before anything is turned, and the sheet says by how much', () => {
    const out = sheet.moves.outOfReach.find((o) => o.reading === 'front right camber')!
    expect((out.by * 180) / Math.PI).toBeGreaterThan(0.3)
    expect(sheet.moves.sentence).toMatch(/before turning/)
    // AD19: what can be set meanwhile is toe, and toe is set by tie rods
    expect(sheet.moves.moves.map((m) => m.kind)).toEqual(sheet.moves.moves.map(() => 'thread'))
    expect(sheet.advice.join(' ')).toMatch(/included angles differ/)
    // heights are inside and the included angle is not: the part named first is one that explains both
    expect(sheet.moves.sentence).toMatch(/before turning anything: bent strut tube, bent knuckle/)
    expect(sheet.moves.sentence).not.toMatch(/sagged spring|lower arm/)
    expect(sheetFrom(demoSources('07')).advice.join(' ')).not.toMatch(/included angles differ/)
  })
})
