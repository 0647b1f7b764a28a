import { writeFileSync } from 'node:fs'
import { axisPlaces } from '../src/linkage/batch-row.ts'
import { closedKernel } from '../src/linkage/closed-kernel.ts'
import type { Mechanism } from '../src/linkage/index.ts'
import { newtonKernel } from '../src/linkage/newton-kernel.ts'

/** Numbers of the closed form that the rival expects, whether or not the layout has one. */
const closedNumbers = 48

/** Writes drives and corner as doubles, in the order in which bench/c/rival.c reads them. */
export function writeNumbers(path: string, m: Mechanism, drives: Float64Array): void {
  const newton = newtonKernel(m)
  const closed = closedKernel(m)
  const axis = axisPlaces(m)
  const at = (place: number | undefined): readonly number[] =>
    place === undefined ? [0, 0, 0] : [...m.form.subarray(place, place + 3)]
  const travel = drives.filter((_, i) => i % 2 === 0)
  const rack = drives.filter((_, i) => i % 2 === 1)
  const numbers = [
    travel.length,
    ...travel,
    ...rack,
    ...m.home,
    newton.strut ? 1 : 0,
    newton.firstLink,
    newton.rackAt,
    newton.size,
    newton.sign,
    ...newton.packed,
    axis ? 1 : 0,
    ...at(axis?.lower),
    ...at(axis?.upper),
    ...m.spin,
    closed?.home ?? 0,
    closed?.rate ?? 0,
    ...(closed?.numbers ?? new Float64Array(closedNumbers)),
  ]
  writeFileSync(path, Float64Array.from(numbers))
}
