import type { Assembly, AxleName } from './assembly.ts'
import type { Choice } from './choice.ts'
import { meanMinutes } from './mean-minutes.ts'
import { usualMinutes } from './usual-minutes.ts'

/** What an axle costs once, however many joints ask for it. @source definition */
export type AskedOnce = `${AxleName} ${'ramps' | 'angles' | 'adjusters'}`

const minutesOf = {
  ramps: meanMinutes(usualMinutes['drive onto ramps']) + meanMinutes(usualMinutes['drive off ramps']),
  angles: 2 * meanMinutes(usualMinutes['read angles']) + meanMinutes(usualMinutes['set toe']),
  adjusters: meanMinutes(usualMinutes['set camber and caster']),
}

/**
 * What the joints that a choice opens on the vehicle ask for once an axle: the ramps for its bush bolts, angles read
 * and set, adjusters set; and what one of these takes.
 *
 * @returns minutes
 * @source own derivation: docs/methods/plan.md
 */
export const askedOnce = {
  by({ joints }: Pick<Assembly, 'joints'>, open: Choice['open']): ReadonlySet<AskedOnce> {
    const asked = new Set<AskedOnce>()
    for (const id of open) {
      const joint = joints[id]!
      if (joint.final === 'at ride height' && joint.place === 'under') asked.add(`${joint.axle} ramps`)
      if (joint.locates || joint.adjusts) asked.add(`${joint.axle} angles`)
      if (joint.adjusts) asked.add(`${joint.axle} adjusters`)
    }
    return asked
  },
  minutes: (asked: AskedOnce): number => minutesOf[asked.split(' ')[1] as keyof typeof minutesOf],
}
