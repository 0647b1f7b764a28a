import fc from 'fast-check'
import type { Displacement, Point, SemiTrailingArm } from '../../../src/linkage/index.ts'
import { deg, metre } from '../../../src/quantity/index.ts'

/** An invented rear arm: its hinge runs from the outer front bush inward and rearward. */
export const trailingArm: SemiTrailingArm = {
  layout: 'semi-trailing arm',
  innerFront: [0.43, 0.56, 0.29],
  innerRear: [0.31, 0.21, 0.27],
  wheelCentre: [0, 0.72, 0.31],
  camber: deg(-1.2),
  toe: deg(0.15),
  tyreRadius: metre(0.31),
}

const shift: fc.Arbitrary<Point> = fc.tuple(
  ...([0, 1, 2] as const).map(() => fc.double({ min: -0.06, max: 0.06, noNaN: true })),
) as unknown as fc.Arbitrary<Point>
const moved = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
const turnedRound = ([x, y, z]: Point): Point => [-x, y, z]

/** Trailing, semi-trailing and leading arms; `crossways` makes the hinge lie straight across. */
export const anyTrailingArm: fc.Arbitrary<SemiTrailingArm> = fc
  .record({
    a: shift,
    b: shift,
    w: shift,
    leading: fc.boolean(),
    crossways: fc.boolean(),
    camber: fc.double({ min: -3, max: 3, noNaN: true }),
    toe: fc.double({ min: -1, max: 1, noNaN: true }),
  })
  .map(({ a, b, w, leading, crossways, camber, toe }) => {
    const at = leading ? turnedRound : (p: Point): Point => p
    const front = moved(trailingArm.innerFront, a)
    const rear = moved(trailingArm.innerRear, b)
    return {
      ...trailingArm,
      innerFront: at(front),
      innerRear: at(crossways ? [front[0], rear[1], front[2]] : rear),
      wheelCentre: at(moved(trailingArm.wheelCentre, w)),
      camber: deg(camber),
      toe: deg(toe),
    }
  })

/** Bushes moved, arm bent, hub shimmed: millimetres and degrees. */
export const anyArmDisplacement: fc.Arbitrary<Displacement> = fc
  .tuple(shift, shift, shift, shift, shift, shift)
  .map((shifts) => {
    const [a, b, c, d, e, f] = shifts.map((s) => s.map((x) => x / 6) as unknown as Point)
    return {
      body: { innerFront: a!, innerRear: b! },
      knuckle: { eyeFront: c!, eyeRear: d!, wheelCentre: e! },
      spin: f!,
    }
  })
