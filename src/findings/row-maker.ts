import {
  type AxleEnd,
  type AxleReading,
  axleReadings,
  type ReadingName,
  type Side,
  type WheelAngle,
  type WheelReading,
} from '../linkage/index.ts'
import type { ExaminedWheel, FindingsProblem } from './findings-problem.ts'
import { sizesOf } from './sizes-of.ts'
import {
  axleNumbers,
  camberGaugeAt,
  fourWheels,
  heightAt,
  ofAxle,
  ofTurn,
  padAt,
  steerGaugeAt,
  vehicleNumbers,
} from './vehicle-vector.ts'

/** Rows by what they read; null for what this vehicle's models do not give. */
export function rowMaker(problem: FindingsProblem, straight: Float64Array) {
  const { track, wheelbase } = sizesOf(problem.axles)
  const blank = (): Float64Array => new Float64Array(vehicleNumbers)
  const axleAt = (end: AxleEnd): number => problem.axles.findIndex((axle) => axle.end === end)
  const one = (place: number): Float64Array => {
    const of = blank()
    of[place] = 1
    return of
  }
  const wheelRow = (end: AxleEnd, side: Side, angle: WheelAngle): Float64Array | null => {
    const i = axleAt(end)
    const place = i * axleNumbers + ofAxle(side, angle)
    const across = track[end]
    if (i < 0 || across === undefined) return null
    const known = angle === 'camber' || angle === 'toe' || straight[place] !== 0
    if (!known) return null
    const of = one(place)
    const out = side === 'left' ? 1 : -1
    const wheel = (which: Side): ExaminedWheel => `${end} ${which}`
    if (angle === 'camber' || angle === 'sai') {
      const lean = (angle === 'camber' ? out : -out) / across
      of[heightAt(wheel('left'))]! += lean
      of[heightAt(wheel('right'))]! -= lean
      of[padAt(wheel('left'))]! -= lean
      of[padAt(wheel('right'))]! += lean
    }
    if (angle === 'camber') of[camberGaugeAt] = 1
    if (angle === 'caster') {
      const pitch = 1 / (2 * wheelbase)
      for (const at of fourWheels) {
        const nose = at.startsWith('front') ? -pitch : pitch
        of[heightAt(at)]! += nose
        of[padAt(at)]! -= nose
      }
      of[steerGaugeAt] = out * Math.tan(straight[i * axleNumbers + ofAxle(side, 'sai')]!)
    }
    return of
  }
  const reading = (name: ReadingName): Float64Array | null => {
    const parts: readonly (readonly [WheelReading, number])[] = axleReadings[name as AxleReading] ?? [
      [name as WheelReading, 1],
    ]
    const of = blank()
    for (const [wheelReading, times] of parts) {
      const [end, side, angle] = wheelReading.split(' ') as [AxleEnd, Side, WheelAngle]
      const row = wheelRow(end, side, angle)
      if (!row) return null
      for (let k = 0; k < of.length; k++) of[k]! += times * row[k]!
    }
    return of
  }
  const front = axleAt('front')
  return {
    one,
    reading,
    turn: (side: Side): Float64Array | null => {
      const place = front * axleNumbers + ofTurn(side)
      return front < 0 || straight[place] === 0 ? null : one(place)
    },
    setBack: (): Float64Array | null => {
      if (front < 0) return null
      const of = one(front * axleNumbers + ofAxle('left', 'x'))
      of[front * axleNumbers + ofAxle('right', 'x')] = -1
      return of
    },
  }
}
