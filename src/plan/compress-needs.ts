import type { Need } from './action.ts'
import type { HoldNode } from './assembly.ts'
import { isStrutSpring } from './is-strut-spring.ts'
import { keys } from './keys.ts'
import type { Work } from './work.ts'

/**
 * What must be so before a spring is compressed: first on the vehicle, or with its strut on the bench; then the new
 * one on the bench, once the old one is out and the new one was compared.
 *
 * @source common practice, no source
 */
export function compressNeeds(work: Work, hold: HoldNode, nth: 1 | 2, carried: Need): readonly Need[] {
  const off: Need = { key: keys.part(hold.id), is: ['off', 'freed'], why: 'it is on the bench' }
  const whole: Need = { key: keys.energy(hold.id), is: ['held by its set'], why: 'its own joints hold it' }
  if (nth === 1) return isStrutSpring(work.assembly, hold) ? [off, whole] : [carried, whole]
  const right: readonly Need[] = work.renewed.has(hold.id)
    ? [{ key: keys.compared(hold.id), is: ['beside the old'], why: 'it is the right one', rule: 'I16' }]
    : []
  return [off, { key: keys.energy(hold.id), is: ['let down'], why: 'the old one is out' }, ...right]
}
