import {
  type Displacement,
  type Mechanism,
  mechanism,
  type Point,
  type Setting,
} from '../../linkage/index.ts'
import type { ExchangeEccentric, ExchangeGeometry } from './read-geometry.ts'
import { badInput } from './row-refusal.ts'

/** How the adjusters of the exchange file stand: sines of the washers' angles, and metres added to the tie rod. */
export interface Stand {
  readonly sinFront: number
  readonly sinRear: number
  readonly tie: number
}

/** The corner with its adjusters turned. */
export function settledCorner(geometry: ExchangeGeometry, stand: Stand): Mechanism {
  return mechanism(geometry.points, standDisplacement(geometry, stand))
}

/** What a stand of the adjusters does to the points. Not turned at all needs no adjusters. */
function standDisplacement(geometry: ExchangeGeometry, stand: Stand): Displacement {
  const length = stand.tie === 0 ? {} : { length: { tie: stand.tie } }
  if (stand.sinFront === 0 && stand.sinRear === 0) return length
  const { front, rear } = wishboneAdjusters(geometry)
  return {
    body: { upperFrontInner: shift(front, stand.sinFront), upperRearInner: shift(rear, stand.sinRear) },
    ...length,
  }
}

/** The three settings of an inverse row: sine of front and rear washer, and the tie rod. */
export function standSettings(geometry: ExchangeGeometry): readonly Setting[] {
  const { front, rear } = wishboneAdjusters(geometry)
  return [
    {
      name: 'front',
      range: [-1, 1],
      displacement: (sine) => ({ body: { upperFrontInner: shift(front, sine) } }),
    },
    {
      name: 'rear',
      range: [-1, 1],
      displacement: (sine) => ({ body: { upperRearInner: shift(rear, sine) } }),
    },
    {
      name: 'tie',
      range: [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY],
      displacement: (by) => ({ length: { tie: by } }),
    },
  ]
}

/** The adjusters, or `bad-input` when there are none, or no upper arm for them. */
export function wishboneAdjusters(geometry: ExchangeGeometry): {
  readonly front: ExchangeEccentric
  readonly rear: ExchangeEccentric
} {
  if (geometry.points.layout !== 'double wishbone')
    throw badInput(
      'adjusters',
      `These adjusters sit on an upper arm, which a ${geometry.points.layout} corner has not.`,
      'Leave the adjusters out.',
    )
  if (!geometry.adjusters)
    throw badInput('adjusters', 'This row turns adjusters that are not described.', 'Give the adjusters.')
  return geometry.adjusters
}

const shift = ({ e, slot }: ExchangeEccentric, sine: number): Point => [
  e * sine * slot[0],
  e * sine * slot[1],
  e * sine * slot[2],
]
