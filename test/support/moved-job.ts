import type { SheetSources } from '../../src/sheet/index.ts'
import { demoSources } from './demo-sources.ts'

const demo = demoSources('07')
const { front } = demo.corners
/** Points that stand for the layout only: then moves have much to teach. */
const vague = {
  ...front,
  points: Object.fromEntries(
    Object.entries(front.points).map(([name, point]) => [name, { ...point, spread: 0.015 }]),
  ),
} as typeof front

/** The demo's vehicle (or another of its drawing) with its right front eccentric turned after the second round, and read again. Invented. */
export function movedJob({
  number = '7-1',
  vehicle = 'Port unit 21, crew bus',
  turned = -60,
  camber = 0,
  at = '2026-05-04T10:00:00+01:00' as string | undefined,
  /** True: no steer sweep and no strings the second time. */
  onlyCamber = false,
  /** Ride height of that wheel in the third round, as typed. */
  height = undefined as string | undefined,
  between = [] as readonly { readonly kind: string; readonly data: object }[],
} = {}): SheetSources & { readonly corners: { readonly front: typeof front } } {
  const { entries } = demo.job
  const second = entries.findIndex((e) => e.kind === 'round' && e.data['number'] === 2)
  const stamp = at === undefined ? {} : { at }
  const readings = entries.slice(second + 1).flatMap((e) => {
    if (e.kind !== 'reading' || (onlyCamber && e.data['method'] !== 'inclinometer')) return []
    const isIt = e.data['method'] === 'inclinometer' && e.data['wheel'] === 'front right'
    const { at: _, ...bare } = e
    return [{ ...bare, ...stamp, data: isIt ? withCamber(e.data, camber) : e.data }]
  })
  return {
    ...demo,
    corners: { front: vague, rear: null },
    job: {
      ...demo.job,
      job: number,
      entries: [
        ...entries.map((e) => (e.kind === 'opened' ? { ...e, data: { ...e.data, number, vehicle } } : e)),
        {
          kind: 'moved',
          data: { adjuster: 'lower-front-eccentric', wheel: 'front right', by: `${turned}°` },
          ...stamp,
        },
        ...(between as typeof entries),
        { kind: 'round', data: { number: 3, purpose: 'provisional', settled: true }, ...stamp },
        ...(height === undefined ? [] : [settled(height)]),
        ...readings,
      ],
    },
  }
}

/** An inclinometer's readings, all changed by so many degrees. */
function withCamber(data: Readonly<Record<string, unknown>>, by: number) {
  const readings = data['readings'] as readonly { readonly wheelTurn: string; readonly reading: string }[]
  return {
    ...data,
    readings: readings.map((one) => ({
      ...one,
      reading: `${(Number.parseFloat(one.reading) + by).toFixed(4)}°`,
    })),
  }
}

const settled = (reading: string) => ({
  kind: 'ride height',
  data: { wheel: 'front right', when: 'settled', rule: 'rule', readings: [reading] },
})
