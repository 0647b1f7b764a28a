import { expect, test } from 'vitest'
import { boltSheetFrom } from '../../../src/sheet/index.ts'
import { demoSources } from '../../support/demo-sources.ts'
import { entryOf } from '../../support/finished-job.ts'

const bus = demoSources('07')
const joint = 'lower-front-bolt'
const withMarks = (...marks: Parameters<typeof entryOf>[1][]) =>
  boltSheetFrom({
    ...bus,
    job: { ...bus.job, entries: [...bus.job.entries, ...marks.map((data) => entryOf('mark', data))] },
  })
const boltAt = (wheel: string, sheet = boltSheetFrom(bus)) =>
  sheet.bolts.find((one) => one.joint === joint && one.wheel === wheel)!

test('SH48 how a joint was found stands at that joint and wheel, in its own words, with its clock', () => {
  const before = boltAt('front right').marks.length
  const sheet = withMarks({
    what: 'washer to bracket',
    joint,
    wheel: 'front right',
    clock: "4 o'clock",
    wayRound: 'head forward',
    shims: [{ at: 'front bolt', thicknesses: ['1.5 mm', '0.8 mm'] }],
    exposedThread: '12 mm',
    bodySideToo: true,
  })
  const { marks } = boltAt('front right', sheet)
  expect(marks).toHaveLength(before + 1)
  expect(marks.at(-1)).toMatchObject({
    what: 'washer to bracket',
    words: [
      'head forward',
      'shims front bolt: 1.5 mm, 0.8 mm',
      'exposed thread 12 mm',
      'marked on the body too',
    ],
  })
  expect(marks.at(-1)!.clock).toBeCloseTo((4 * Math.PI) / 6, 12)
  expect(boltAt('front left', sheet).marks).toEqual(boltAt('front left').marks)
})

test('SH48 the setting of an adjuster stands at the joint whose bolt carries it', () => {
  const { adjuster, wheels } = bus.job.entries
    .filter(({ kind }) => kind === 'as found')
    .map(({ data }) => ({ adjuster: String(data['adjuster']), wheels: String(data['wheel']) }))[0]!
  const bolts = boltSheetFrom(bus).bolts.filter((one) => one.adjuster === adjuster)
  const own = bolts.filter((one) => one.named === wheels)
  expect(own.some(({ marks }) => marks.some(({ what }) => what === 'setting as found'))).toBe(true)
})

test('SH48 a mark that names no joint stands at none', () => {
  const marks = (sheet: ReturnType<typeof boltSheetFrom>) => sheet.bolts.flatMap((bolt) => bolt.marks).length
  expect(marks(withMarks({ what: 'hose routing', wheel: 'front right' }))).toBe(marks(boltSheetFrom(bus)))
})
