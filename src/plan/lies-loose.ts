import type { Action } from './action.ts'
import type { Assembly, PartNode } from './assembly.ts'
import { jointsOf } from './joints-of.ts'
import { keys } from './keys.ts'
import type { State } from './state.ts'

const undoes: readonly Action['verb'][] = ['open', 'free', 'take off', 'hang']

/**
 * The part that was put back and that nothing holds yet, while an action undoes something else of its corner.
 *
 * @source common practice, no source
 */
export function liesLoose(assembly: Assembly, state: State, action: Action): PartNode | null {
  if (!undoes.includes(action.verb)) return null
  for (const part of Object.values(assembly.parts)) {
    const is = state[keys.part(part.id)]
    if ((is !== 'fitted' && is !== 'new') || part.id === action.part || !isHere(part, action)) continue
    const ties = jointsOf(assembly, part.id).filter(({ kind }) => kind !== 'seat')
    const isOpen = ({ id }: { readonly id: string }) => state[keys.joint(id)] === 'open'
    if (ties.length > 0 && ties.every(isOpen)) return part
  }
  return null
}

/** Of the same corner; what the axle has once belongs to both. */
const isHere = (part: PartNode, { axle, side }: Action) =>
  (part.axle === axle || part.axle === null) && (part.side === null || side === null || part.side === side)
