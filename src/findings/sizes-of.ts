import { cornerPoints, isWholeAxle, wholeAxlePoints } from '../corner/index.ts'
import type { AxleEnd } from '../linkage/index.ts'
import type { ExaminedAxle } from './findings-problem.ts'

/** Track of each axle that there is a model of, and the wheelbase, m; a wheelbase that no second axle gives is a usual one. */
export function sizesOf(axles: readonly ExaminedAxle[]): {
  readonly track: Partial<Readonly<Record<AxleEnd, number>>>
  readonly wheelbase: number
} {
  const centre = ({ corner }: ExaminedAxle) =>
    isWholeAxle(corner.layout) ? wholeAxlePoints(corner).left.wheelCentre : cornerPoints(corner).wheelCentre
  const [front, rear] = (['front', 'rear'] as const).map((end) => axles.find((axle) => axle.end === end))
  return {
    track: Object.fromEntries(axles.map((axle) => [axle.end, 2 * centre(axle)[1]])),
    wheelbase: front && rear ? Math.abs(centre(front)[0] - centre(rear)[0]) : usualWheelbase,
  }
}

/** Of a vehicle with one axle examined: only its pitch is divided by it. @source own choice */
const usualWheelbase = 2.7
