import type { Action } from './action.ts'
import type { Assembly, PartNode } from './assembly.ts'
import { jointsOf } from './joints-of.ts'
import { keys } from './keys.ts'
import type { State } from './state.ts'

const undoes: readonly Action['verb'][] = ['open', 'free', 'take off', 'hang']
const holds: readonly Action['verb'][] = ['start', 'run up', 'connect']

/**
 * Looks on at an order, action by action, for the part that was put back and that nothing holds yet, while an action
 * undoes something else of its corner. What was held once since it was put back comes apart as it came the first time.
 *
 * @param from the state before the first action
 * @returns what to ask of each action in turn, with the state before it
 * @source common practice, no source
 */
export function liesLoose(
  assembly: Assembly,
  from: State,
): (state: State, action: Action) => PartNode | null {
  const isOpen = (state: State, id: string) => state[keys.joint(id)] === 'open'
  const tiesOf = (id: string) => jointsOf(assembly, id).filter(({ kind }) => kind !== 'seat')
  const isBack = (is: string | undefined) => is === 'fitted' || is === 'new'
  const loose = new Set(
    Object.keys(assembly.parts).filter((id) => {
      const ties = tiesOf(id)
      return isBack(from[keys.part(id)]) && ties.length > 0 && ties.every((tie) => isOpen(from, tie.id))
    }),
  )
  return (state, action) => {
    const found = undoes.includes(action.verb)
      ? [...loose].find((id) => id !== action.part && isHere(assembly.parts[id]!, action))
      : undefined
    for (const [key, is] of Object.entries(action.effects)) {
      if (!key.startsWith('part ')) continue
      const id = key.slice('part '.length)
      const ties = tiesOf(id)
      const isLoose = isBack(is) && ties.length > 0 && ties.every((tie) => isOpen(state, tie.id))
      if (isLoose) loose.add(id)
      else loose.delete(id)
    }
    if (action.joint !== undefined && holds.includes(action.verb))
      for (const id of assembly.joints[action.joint]?.joins ?? []) loose.delete(id)
    return found === undefined ? null : assembly.parts[found]!
  }
}

/** Of the same corner; what the axle has once belongs to both. */
const isHere = (part: PartNode, { axle, side }: Action) =>
  (part.axle === axle || part.axle === null) && (part.side === null || side === null || part.side === side)
