import { displaceable, type Mechanism } from './mechanism.ts'
import type { Drive, Point } from './points.ts'
import { poseAt } from './pose-at.ts'
import { type Direction, ratesAt, type WheelRates } from './rates-at.ts'

/**
 * Rates of the wheel's angles and place against every number of a corner, height held: `body.tieInner.y`,
 * `knuckle.lowerOuter.z`, `length.tie`, `spin.x`, `travel`, `rack`.
 *
 * @returns rad per metre (per radian for spin) by the name of the number
 * @throws {Refusal} as `poseAt`; `singular` where the wheel is not held
 * @source own derivation: docs/methods/pose-of-a-corner.md
 * @example sensitivities(m, ride)['length.tie']?.toe // 6.95043 rad/m
 */
export function sensitivities(m: Mechanism, drive: Drive): Readonly<Record<string, WheelRates>> {
  const rates = ratesAt(m, poseAt(m, drive))
  const all = Object.entries(parameters(m)).map(([name, direction]) => [name, rates(direction)] as const)
  return Object.fromEntries(all)
}

/** Every number of a corner as a direction, by the name that `sensitivities` uses. @source definition */
export function parameters(m: Mechanism): Readonly<Record<string, Direction>> {
  const names = displaceable(m.points)
  const all: Record<string, Direction> = {}
  for (const group of ['body', 'knuckle'] as const)
    for (const name of names[group])
      for (const [axis, way] of axes) all[`${group}.${name}.${axis}`] = { [group]: { [name]: way } }
  for (const name of names.length) all[`length.${name}`] = { length: { [name]: 1 } }
  for (const [axis, way] of axes) all[`spin.${axis}`] = { spin: way }
  all['travel'] = { travel: 1 }
  if (m.facts.rackLeg >= 0) all['rack'] = { rack: 1 }
  return all
}

const axes: readonly (readonly [string, Point])[] = [
  ['x', [1, 0, 0]],
  ['y', [0, 1, 0]],
  ['z', [0, 0, 1]],
]
