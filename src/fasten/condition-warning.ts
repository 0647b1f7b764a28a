import type { ThreadCondition } from './friction.ts'
import { frictionOf } from './friction.ts'

/**
 * What to say when a thread is met in another condition than stated. The torque stays as stated: nothing is derated.
 *
 * @returns null when nothing was stated or nothing differs
 * @source VDI 2230 Part 1, friction classes (from memory), for which way it goes; common practice, no source
 * @example conditionWarning({ stated: 'dry', found: 'dry' }) // null
 */
export function conditionWarning({
  stated,
  found,
}: {
  readonly stated: ThreadCondition | null
  readonly found: ThreadCondition | null
}): string | null {
  if (stated === null || stated === found) return null
  const middle = (one: ThreadCondition) => frictionOf(one).low + frictionOf(one).high
  if (found === null)
    return `The torque is stated for a thread that is ${words[stated]}: look before it is pulled.`
  const way =
    middle(found) === middle(stated)
      ? 'the locking or the film is not what the value was stated for'
      : middle(found) < middle(stated)
        ? 'the same torque pulls harder and may stretch the bolt'
        : 'the same torque clamps less'
  return `The torque is stated for a thread that is ${words[stated]}; this one is ${words[found]}: ${way}. Clean it to the stated condition; the value is not changed for it.`
}

const words: Readonly<Record<ThreadCondition, string>> = {
  dry: 'dry',
  oiled: 'oiled',
  'locking compound': 'with locking compound',
  'anti-seize': 'with anti-seize',
}
