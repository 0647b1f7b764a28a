import type { Assembly } from './assembly.ts'
import { factOf } from './fact-of.ts'
import { keys } from './keys.ts'
import type { State } from './state.ts'

/**
 * How the vehicle stands and how it is held, in words: "on its wheels", "on stands, wheels hanging", "jack under the
 * front left arm, body on stands".
 *
 * @source definition
 */
export function stationOf(assembly: Assembly, state: State): string {
  const supports = assembly.axles.map((axle) => ({ axle, is: factOf(state, keys.support(axle)) }))
  const many = assembly.axles.length > 1 && new Set(supports.map(({ is }) => is)).size > 1
  const stand = [...new Set(supports.map(({ axle, is }) => `${many ? `${axle} ` : ''}${told(is)}`))].join(
    ', ',
  )
  const arms = assembly.axles
    .flatMap((axle) => [`${axle} left`, `${axle} right`])
    .map((where) => ({ where, is: factOf(state, keys.arm(where)) }))
  const jacks = arms
    .filter(({ is }) => is === 'jack under' || is === 'raised to ride height')
    .map(({ where, is }) =>
      is === 'jack under' ? `jack under the ${where} arm` : `${where} arm raised to ride height`,
    )
  const axles = assembly.axles
    .filter((axle) =>
      Object.values(assembly.holds).some(
        (hold) =>
          hold.axle === axle &&
          hold.standIns.includes('axle on stands') &&
          factOf(state, keys.axleStands(axle)) === 'on stands',
      ),
    )
    .map((axle) => `${axle} axle on stands of its own`)
  return [...jacks, ...axles, stand].join(', ')
}

const told = (support: string): string =>
  support === 'on stands, seen loaded'
    ? 'on stands, wheels hanging'
    : support === 'on the lift, arms locked'
      ? 'on the lift, wheels hanging'
      : support
