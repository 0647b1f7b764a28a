import type { Displacement, Point } from './points.ts'
import { plus } from './vector.ts'

/**
 * Several displacements as one: shifts of the same point add, lengths add, spin rotation vectors add.
 *
 * @assumes spin rotations small enough to add as vectors: two of 1° about square axes differ by 0.009° from turning one after the other
 * @source definition
 * @example sumOfDisplacements([{ length: { tie: 0.001 } }, { length: { tie: 0.002 } }]).length // { tie: 0.003 }
 */
export function sumOfDisplacements(list: readonly Displacement[]): Displacement {
  const body = sumOf(
    list.map((d) => d.body),
    plus,
  )
  const knuckle = sumOf(
    list.map((d) => d.knuckle),
    plus,
  )
  const length = sumOf(
    list.map((d) => d.length),
    (a: number, b: number) => a + b,
  )
  const spins = list.flatMap((d) => (d.spin ? [d.spin] : []))
  return {
    ...(body && { body }),
    ...(knuckle && { knuckle }),
    ...(length && { length }),
    ...(spins.length > 0 && { spin: spins.reduce<Point>(plus, [0, 0, 0]) }),
  }
}

function sumOf<T>(
  list: readonly (Readonly<Record<string, T>> | undefined)[],
  add: (a: T, b: T) => T,
): Record<string, T> | undefined {
  const sum: Record<string, T> = {}
  for (const each of list)
    for (const [name, value] of Object.entries(each ?? {}))
      sum[name] = Object.hasOwn(sum, name) ? add(sum[name]!, value) : value
  return Object.keys(sum).length > 0 ? sum : undefined
}
