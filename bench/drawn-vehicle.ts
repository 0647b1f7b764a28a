import { type Corner, cornerPoints, isWholeAxle } from '../src/corner/index.ts'
import { mechanism, poseAt } from '../src/linkage/index.ts'
import type { SeededRandom } from '../src/measure/index.ts'
import { metre, mm, Refusal, rad } from '../src/quantity/index.ts'

// How vehicles of a layout differ, written out again: nothing of the fit is used here.
const oneSize = 0.04
const oneShape = 0.03
const degree = Math.PI / 180
const camberSpread = 0.7 * degree
const toeSpread = 0.25 * degree
const fittedTogether: Readonly<Record<string, readonly (readonly [string, string, number])[]>> = {
  wishbone: [
    ['upper-front-pivot', 'upper-rear-pivot', 8],
    ['lower-front-pivot', 'lower-rear-pivot', 8],
  ],
  strut: [['lower-front-pivot', 'lower-rear-pivot', 10]],
}

/**
 * A vehicle of which a corner model is typical: all points off by their own spread, the whole larger or smaller, longer,
 * broader or higher, both pivots of an arm shifted. One whose wheel could not go through the travel of its kind, is drawn again: there are none such on the road.
 */
export function drawnVehicle(typical: Corner, random: SeededRandom): Corner {
  const draw = (spread: number) => spread * random.normal()
  for (let turn = 0; turn < 100; turn++) {
    const size = draw(oneSize)
    const factors = [0, 1, 2].map(() => 1 + size + draw(oneShape))
    const wheelX = typical.points['wheel-centre']!.at[0]
    const kind = typical.layout.includes('wishbone') ? 'wishbone' : typical.layout
    const shifts = new Map<string, number[]>()
    for (const [front, rear, by] of fittedTogether[kind] ?? []) {
      const shift = [draw(by / 1000), draw(by / 1000), draw(by / 1000)]
      shifts.set(front, shift).set(rear, shift)
    }
    const points = Object.fromEntries(
      Object.entries(typical.points).map(([name, point]) => {
        const at = point.at.map((x, k) => {
          const origin = k === 0 ? wheelX : 0
          return metre(
            origin + (x - origin) * factors[k]! + draw(point.spread ?? 0) + (shifts.get(name)?.[k] ?? 0),
          )
        })
        return [name, { ...point, at: [at[0]!, at[1]!, at[2]!] as const }]
      }),
    )
    const wheel = {
      ...typical.wheel,
      camber: rad(typical.wheel.camber + draw(camberSpread)),
      toe: rad(typical.wheel.toe + draw(toeSpread)),
    }
    const vehicle: Corner = { ...typical, points, wheel }
    if (canMove(vehicle)) return vehicle
  }
  throw new Error(`no vehicle of ${typical.id} could be drawn`)
}

function canMove(corner: Corner): boolean {
  if (isWholeAxle(corner.layout)) return true
  try {
    const m = mechanism(cornerPoints(corner))
    const { bump, droop } = corner.travel ?? { bump: mm(60), droop: mm(60) }
    for (const travel of [bump, metre(-droop)]) poseAt(m, { travel, rack: metre(0) })
    return true
  } catch (error) {
    if (error instanceof Refusal) return false
    throw error
  }
}
