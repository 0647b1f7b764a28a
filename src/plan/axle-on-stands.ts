import type { Action } from './action.ts'
import { agrees } from './agrees.ts'
import type { AxleName, HoldNode } from './assembly.ts'
import { cautionWords as say } from './caution-words.ts'
import { dropLinkNeeds } from './drop-link-needs.ts'
import { keys } from './keys.ts'
import { makeAction } from './make-action.ts'
import { supports } from './supports.ts'
import type { Work } from './work.ts'

/**
 * The axle set on stands of its own, the body above it, so that its springs hang slack; and off them again.
 *
 * @param holds the springs of the axle that this lets down
 * @source common practice, no source
 */
export function axleOnStands(
  work: Work,
  axle: AxleName,
  holds: readonly HoldNode[],
): { readonly on: () => Action; readonly off: () => Action } {
  const energies = (value: string) => Object.fromEntries(holds.map(({ id }) => [keys.energy(id), value]))
  const names = holds.map(({ called }) => called).join(' and ')
  const hang = holds.length > 1 ? 'hang' : agrees(names, 'hangs', 'hang')
  return {
    on: () =>
      makeAction({
        id: `axle on stands ${axle}`,
        axle,
        verb: 'axle on stands',
        words: `Set the ${axle} axle on stands of its own and raise the body until the ${names} ${hang} slack`,
        tool: 'stands',
        place: 'under',
        how: { body: 'on its own stands' },
        needs: [
          { key: keys.support(axle), is: supports.lifted, why: 'the body is carried', rule: 'I3' },
          ...dropLinkNeeds(work, { axle, side: null }),
        ],
        effects: { ...energies('let down'), [keys.axleStands(axle)]: 'on stands' },
        cautions: [say.leaf, say.stands],
        records: ['axle carried, springs slack'],
        why: 'nothing is left in the springs when their joints open',
      }),
    off: () =>
      makeAction({
        id: `axle off stands ${axle}`,
        axle,
        verb: 'axle off stands',
        words: `Bring the weight back onto the ${names} and take the ${axle} axle’s stands away`,
        tool: 'stands',
        place: 'under',
        needs: [
          ...[...new Set(holds.flatMap(({ joints }) => joints))].map((joint) => ({
            key: keys.joint(joint),
            is: ['closed', 'run up', 'final', 'checked'],
            why: 'it holds a spring',
            rule: 'I4' as const,
          })),
          ...holds.map(({ id }) => ({ key: keys.energy(id), is: ['let down'], why: 'it is slack' })),
          ...holds.map(({ id }) => ({
            key: keys.part(id),
            is: ['fitted', 'new'],
            why: 'it is in its seats',
            rule: 'I4' as const,
          })),
        ],
        effects: { ...energies('held by its set'), [keys.axleStands(axle)]: 'none' },
        cautions: [say.leaf],
        why: 'its own joints hold it again',
      }),
  }
}
