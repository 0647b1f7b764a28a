import type { Displacement, Point } from '../linkage/index.ts'

const all = <T>(record: Readonly<Record<string, T>> | undefined, of: (value: T) => T) =>
  record && Object.fromEntries(Object.entries(record).map(([name, value]) => [name, of(value)]))

/** A displacement so many times over. @source definition */
export function scaledDisplacement({ body, knuckle, length, spin }: Displacement, k: number): Displacement {
  const point = ([x, y, z]: Point): Point => [k * x, k * y, k * z]
  return {
    ...(body && { body: all(body, point)! }),
    ...(knuckle && { knuckle: all(knuckle, point)! }),
    ...(length && { length: all(length, (x) => k * x)! }),
    ...(spin && { spin: point(spin) }),
  }
}
