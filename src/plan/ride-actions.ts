import type { Action, Need } from './action.ts'
import type { Assembly, AxleName, Side } from './assembly.ts'
import { cautionWords as say } from './caution-words.ts'
import { dropLinkJoints } from './drop-link-joints.ts'
import { keys } from './keys.ts'
import { makeAction } from './make-action.ts'
import { supports } from './supports.ts'

/** Raising one corner to ride height with a jack, and the axle onto stands. @source definition */
export interface RideActions {
  readonly raise: (target: 'the sheet' | 'height before lifting', needs: readonly Need[]) => Action
  readonly away: (needs: readonly Need[]) => Action
}

/**
 * Raising a corner to ride height by a jack under the arm, beside the stands: for bush bolts that cannot be reached
 * with the wheel on.
 *
 * @source common practice, no source
 */
export function rideActions(assembly: Assembly, { axle, side }: { axle: AxleName; side: Side }): RideActions {
  const where = `${axle} ${side}`
  const link = dropLinkJoints(assembly, { axle, side })
  const base = { axle, side, place: 'at the wheel', tool: 'trolley jack' } as const
  return {
    raise: (target, needs) =>
      makeAction({
        ...base,
        id: `raise to ride ${where}`,
        verb: 'raise to ride height',
        words: `Raise the ${side} arm to ride height with the jack, hub to arch as ${target === 'the sheet' ? 'the sheet says' : 'recorded before lifting'}`,
        how: { target, gap: 'watched', load: 'estimated', under: 'nobody' },
        needs: [
          { key: keys.support(axle), is: supports.lifted, why: 'the body is carried', rule: 'I7b' },
          { key: keys.jack, is: ['free'], why: 'the jack is free' },
          { key: keys.arm(where), is: ['free', 'let down'], why: 'the arm hangs' },
          ...(target === 'height before lifting'
            ? [
                {
                  key: keys.heights,
                  is: ['recorded'],
                  why: 'it is the height to raise to',
                  rule: 'I7',
                } as const,
              ]
            : []),
          ...needs,
        ],
        effects: { [keys.arm(where)]: 'raised to ride height', [keys.jack]: 'in use' },
        cautions: [
          say.rideByJack,
          ...(link.length > 0 ? ['Anti-roll link off, or both sides raised alike.'] : []),
        ],
        records: ['height hub to arch, gap at the stand, load on the jack estimated'],
        why: 'its bush bolts are final at ride height and not reached with the wheel on',
      }),
    away: (needs) =>
      makeAction({
        ...base,
        id: `ride jack away ${where}`,
        verb: 'jack away',
        words: `Lower the ${side} arm and take the jack away`,
        needs: [{ key: keys.arm(where), is: ['raised to ride height'], why: 'the jack is there' }, ...needs],
        effects: { [keys.arm(where)]: 'free', [keys.jack]: 'free' },
        cautions: [say.letDown],
        why: 'its bush bolts are final',
      }),
  }
}
