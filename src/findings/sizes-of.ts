import { cornerPoints, isWholeAxle, wholeAxlePoints } from '../corner/index.ts'
import type { AxleEnd } from '../linkage/index.ts'
import type { ExaminedAxle } from './findings-problem.ts'

/** Track of an axle and the wheelbase, m; a wheelbase that no second axle gives is a usual one. */
export function sizesOf(axles: readonly ExaminedAxle[]): {
  readonly track: Readonly<Record<AxleEnd, number>>
  readonly wheelbase: number
} {
  const centre = ({ corner }: ExaminedAxle) =>
    isWholeAxle(corner.layout) ? wholeAxlePoints(corner).left.wheelCentre : cornerPoints(corner).wheelCentre
  const of = (end: AxleEnd) => axles.find((axle) => axle.end === end)
  const [front, rear] = [of('front'), of('rear')]
  const any = front ?? rear
  const track = (axle: ExaminedAxle | undefined): number =>
    axle ? 2 * centre(axle)[1] : any ? 2 * centre(any)[1] : 1.5
  return {
    track: { front: track(front), rear: track(rear) },
    wheelbase: front && rear ? Math.abs(centre(front)[0] - centre(rear)[0]) : usualWheelbase,
  }
}

/** Only pitch is divided by it. @source own choice */
const usualWheelbase = 2.7
