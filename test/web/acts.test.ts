import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, test } from 'vitest'
import type { DoingAct, SheetBolt, SheetMove } from '../../src/sheet/index.ts'
import { MoveDrawing } from '../../src/web/sheets/angles/move-drawing.tsx'
import { wheelOf } from '../../src/web/sheets/angles/wheel-of.ts'
import { actsNow, ticked } from '../../src/web/sheets/bolts/acts-now.ts'
import { BoldWords } from '../../src/web/sheets/bolts/bold-words.tsx'
import { CastleDrawing } from '../../src/web/sheets/bolts/castle-drawing.tsx'
import { isRetreat } from '../../src/web/sheets/bolts/is-retreat.ts'
import { RingDrawing } from '../../src/web/sheets/bolts/ring-drawing.tsx'
import { ScaleDrawing } from '../../src/web/sheets/bolts/scale-drawing.tsx'
import { TurnDrawing } from '../../src/web/sheets/bolts/turn-drawing.tsx'
import { withoutName } from '../../src/web/sheets/bolts/without-name.ts'
import { entriesOfMoves } from '../../src/web/state/entries-of-moves.ts'
import { howOf } from '../../src/web/state/how-of.ts'
import type { Edit } from '../../src/web/state/messages.ts'
import { momentOf } from '../../src/web/state/moment-of.ts'
import { withHow } from '../../src/web/state/with-how.ts'

const at = '2026-03-10T09:00:00Z'
const place = { wheel: 'front right', joint: 'lower-ball-joint' }
const done = (label: string, entry: Extract<Edit, { kind: 'done' }>['entry'], where = place): Edit => ({
  kind: 'done',
  at,
  ...where,
  label,
  entry,
})
const logged = { kind: 'tightened', data: {} }
const act = (label: string, ready: boolean, entry: DoingAct['entry'] = logged): DoingAct => ({
  label,
  ready,
  entry,
})

describe('what can be said now', () => {
  test('WE26 what is ready stands first, one thing after it is shown, and it cannot be said yet', () => {
    const acts = [act('Floor reached', true), act('Slot meets the hole', false), act('Pin in', false)]
    expect(actsNow({ acts }, [])).toEqual({ ready: [acts[0]], later: acts[1] })
  })

  test('WE32 what is only ticked on the way makes the next ready, and no more than that', () => {
    const acts = [act('Clean', true, null), act('Floor reached', false), act('Pin in', false)]
    expect(actsNow({ acts }, [])).toEqual({ ready: [acts[0]], later: acts[1] })
    expect(actsNow({ acts }, ['Clean'])).toEqual({ ready: [acts[1]], later: acts[2] })
    // A tick of something that the log must hear of says nothing.
    expect(actsNow({ acts }, ['Clean', 'Floor reached']).ready).toEqual([acts[1]])
  })

  test('WE32 ticks count for their joint, until the log hears of it', () => {
    const clean = done('Clean', null)
    expect(ticked([clean], place)).toEqual(['Clean'])
    expect(ticked([clean], { ...place, wheel: 'front left' })).toEqual([])
    expect(ticked([clean, done('Floor reached', logged)], place)).toEqual([])
    expect(ticked([clean, done('Other', logged, { ...place, joint: 'other' })], place)).toEqual(['Clean'])
  })

  test('WE29 undoing, and a look that was not passed, lead back', () => {
    const of = (kind: string, data: object) => isRetreat(act('', true, { kind, data }))
    expect(of('undone', {})).toBe(true)
    expect(of('checked', { passed: false })).toBe(true)
    expect(of('checked', { passed: true })).toBe(false)
    expect(of('tightened', {})).toBe(false)
    expect(isRetreat(act('', true, null))).toBe(false)
  })
})

describe('words', () => {
  const bolt = { name: 'lower ball joint', wheel: 'front right' } as SheetBolt

  test('a sentence of a row does not say the name of its row', () => {
    expect(withoutName('Lower ball joint of the front right wheel: no pin.', bolt)).toBe('No pin.')
    expect(withoutName('Something else: no pin.', bolt)).toBe('Something else: no pin.')
  })

  test('the marked word stands bold, and no mark is left', () => {
    const html = renderToStaticMarkup(createElement(BoldWords, { text: 'Turn **forward**. **Never back.**' }))
    expect(html).toBe('Turn <strong>forward</strong>. <strong>Never back.</strong>')
  })

  test('a drawing belongs to the wheel that its title names', () => {
    expect(wheelOf({ title: 'Right front, from its points', side: 'right' })).toBe('front right')
    expect(wheelOf({ title: 'Reach map, left rear', side: 'left' })).toBe('rear left')
  })
})

describe('drawings of what the hand meets', () => {
  const html = (element: Parameters<typeof renderToStaticMarkup>[0]) => renderToStaticMarkup(element)

  test('WE35 a castle nut has its slots, and the next one comes to the hole clockwise', () => {
    for (const slots of [6, 8, 10]) {
      const svg = html(createElement(CastleDrawing, { slots, pitch: (2 * Math.PI) / slots }))
      expect(svg.match(/class="doing-slot[ "]/g)).toHaveLength(slots)
      expect(svg).toContain(`at most ${360 / slots}°`)
      // The next slot stands before the hole, by less than a pitch: anticlockwise of 12 o'clock.
      const turn = Number(/doing-slot-next"[^>]*rotate\(([-\d.]+)\)/.exec(svg)?.[1])
      expect(turn).toBeLessThan(0)
      expect(turn).toBeGreaterThan(-360 / slots)
      // The arrow's arc sweeps clockwise (SVG 2, 9.3.8: sweep flag 1 is the positive-angle direction).
      expect(svg).toMatch(/doing-move" d="M[-\d. ]+A[\d.]+ [\d.]+ 0 0 1 /)
    }
  })

  test('WE35 a ring is numbered in the order of pulling', () => {
    // Opposite first, five: 1, 3, 5, 2, 4 by place (fasten room, UK DVSA: diametrically opposed in turn).
    const svg = html(createElement(RingDrawing, { order: [0, 2, 4, 1, 3], count: 5 }))
    const numbers = [...svg.matchAll(/<text x="([-\d.]+)" y="([-\d.]+)"[^>]*>(\d)</g)].map(([, x, y, n]) => ({
      n: Number(n),
      clock: Math.atan2(Number(x), -Number(y)),
    }))
    const clock = (n: number) => numbers.find((one) => one.n === n)!.clock
    expect(Math.abs(clock(1))).toBeLessThan(0.2)
    expect(clock(2)).toBeGreaterThan(2)
    expect(clock(3)).toBeLessThan(-1)
  })

  test('WE35 a turn is drawn the way it goes, a hub backed off the other way', () => {
    const forward = html(createElement(TurnDrawing, { angle: Math.PI / 2 }))
    const back = html(createElement(TurnDrawing, { angle: -Math.PI / 6 }))
    expect(forward).toMatch(/A98 98 0 0 1 /)
    expect(forward).toContain('>90°<')
    expect(back).toMatch(/A98 98 0 0 0 /)
    expect(back).toContain('>30° back<')
  })

  test('WE35 the mark stands on the scale where its number belongs; without a number nothing is drawn', () => {
    const svg = html(createElement(ScaleDrawing, { value: 190, unit: 'N·m' }))
    const ticks = [...svg.matchAll(/<text x="([\d.]+)"[^>]*font-size="16">(\d+)</g)].map(([, x, n]) => [
      Number(x),
      Number(n),
    ])
    const [x1, n1] = ticks[0]!
    const [x2, n2] = ticks.at(-1)!
    const mark = Number(/doing-angle" x="([\d.]+)"/.exec(svg)?.[1])
    expect(mark).toBeCloseTo(x1! + ((190 - n1!) / (n2! - n1!)) * (x2! - x1!), 6)
    expect(html(createElement(ScaleDrawing, { value: Number.NaN, unit: 'N·m' }))).toBe('')
  })

  test.each(['offset sleeve', 'slide', 'top plate', 'wedge', 'sub-frame shift'] as const)(
    'WE6 a move of a %s is drawn, and stands in the log in its own unit',
    (kind) => {
      const angle = kind === 'offset sleeve' || kind === 'wedge'
      const move = { order: 1, kind, from: 0, to: angle ? Math.PI / 6 : 0.002, dial: null, looks: null }
      const svg = html(createElement(MoveDrawing, { move: move as SheetMove }))
      expect(svg).toMatch(/^<svg.*<\/svg>$/)
      expect(svg).not.toMatch(/NaN|undefined/)
      const [entry] = entriesOfMoves({
        kind: 'turned',
        at,
        moves: [{ adjuster: 'a', kind, wheel: 'front axle', side: 'left', from: 0, to: move.to }],
      })
      expect(entry!.data).toMatchObject({ by: angle ? '30°' : '2 mm', wheel: 'front left' })
    },
  )
})

describe('the boxes of a round', () => {
  const turned: Edit = { kind: 'turned', at, moves: [], proving: true }
  const ticks: Edit = { kind: 'how', settled: true, proving: false }

  test('WE33 as they were ticked; none when a round is opened or taken', () => {
    expect(howOf([])).toEqual({ settled: false, proving: false })
    expect(howOf([turned])).toEqual({ settled: false, proving: true })
    expect(howOf([turned, ticks])).toEqual({ settled: true, proving: false })
    expect(howOf([turned, ticks, { ...turned, proving: false }])).toEqual({ settled: false, proving: false })
    expect(howOf([turned, ticks, { kind: 'taken', at, settled: true, proving: false }])).toEqual({
      settled: false,
      proving: false,
    })
  })

  test('WE33 ticking on is one edit', () => {
    const once = withHow([turned], { settled: true, proving: false })
    expect(withHow(once, { settled: true, proving: true })).toEqual([
      turned,
      { kind: 'how', settled: true, proving: true },
    ])
  })
})

test('WE37 the log gets the day of the device, or the job’s own, with the time of day', () => {
  expect(momentOf('2026-03-10')).toMatch(/^2026-03-10T\d\d:\d\d:\d\d\.\d{3}Z$/)
  expect(Math.abs(Date.parse(momentOf(null)) - Date.now())).toBeLessThan(60_000)
})
