import fc from 'fast-check'
import type { CornerPoints, Drive, FiveLinkLink, Point } from '../../../src/linkage/index.ts'
import { deg, metre } from '../../../src/quantity/index.ts'
import { pointsOf, poseCases } from '../../published/linkage/read-cases.ts'

const bases = poseCases.cases.map(pointsOf)
type Kind = CornerPoints['layout']

/** Every point moved by its own draw, x turned round when `ahead` (tie rod ahead of the axle, leading arms). */
function moved(base: CornerPoints, shifts: readonly number[], ahead: boolean): CornerPoints {
  let at = 0
  const move = ([x, y, z]: Point): Point => {
    const by = shifts.slice(at, at + 3)
    at += 3
    return [(ahead ? -1 : 1) * (x + by[0]!), y + by[1]!, z + by[2]!]
  }
  // turned round, the front pivot lies behind the rear one: their names change places
  const named = (name: string): string =>
    ahead ? name.replace(/Front|Rear/, (end) => (end === 'Front' ? 'Rear' : 'Front')) : name
  const entries = Object.entries(base).map(([name, value]) => {
    if (name === 'links')
      return [
        name,
        (value as readonly FiveLinkLink[]).map((link) => ({
          inner: move(link.inner),
          outer: move(link.outer),
          rack: link.rack ?? false,
        })),
      ]
    return [named(name), Array.isArray(value) ? move(value as unknown as Point) : value]
  })
  return Object.fromEntries(entries) as CornerPoints
}

/** Plausible corners of the layouts wanted: the pose cases with every coordinate off by up to 20 mm. */
export function anyCorner(
  kinds: readonly Kind[] = ['double wishbone', 'strut', 'five-link'],
): fc.Arbitrary<CornerPoints> {
  return fc
    .record({
      base: fc.constantFrom(...bases.filter((b) => kinds.includes(b.layout))),
      shifts: fc.array(fc.double({ min: -0.02, max: 0.02, noNaN: true }), { minLength: 45, maxLength: 45 }),
      ahead: fc.boolean(),
      camber: fc.double({ min: -2, max: 2, noNaN: true }),
      toe: fc.double({ min: -1, max: 1, noNaN: true }),
      steered: fc.integer({ min: 0, max: 4 }),
    })
    .map(({ base, shifts, ahead, camber, toe, steered }) => {
      const corner = { ...moved(base, shifts, ahead), camber: deg(camber), toe: deg(toe) }
      if (corner.layout !== 'five-link') return corner
      const links = corner.links.map((link, i) => ({
        ...link,
        rack: i === steered,
      })) as unknown as typeof corner.links
      return { ...corner, links }
    })
}

/** Ordinary travel and rack. */
export const anyDrive: fc.Arbitrary<Drive> = fc
  .record({
    travel: fc.double({ min: -0.06, max: 0.06, noNaN: true }),
    rack: fc.double({ min: -0.02, max: 0.02, noNaN: true }),
  })
  .map(({ travel, rack }) => ({ travel: metre(travel), rack: metre(rack) }))

/** A sound corner for refusals and plain checks: the first pose case. */
export const wishbone = bases[0]!
/** The strut of the pose cases. */
export const strut = bases.find((b) => b.layout === 'strut')!
/** The five-link of the pose cases. */
export const fiveLink = bases.find((b) => b.layout === 'five-link')!
