import type { Action } from './action.ts'
import type { AxleName } from './assembly.ts'
import { keys } from './keys.ts'
import { makeAction } from './make-action.ts'
import { supports } from './supports.ts'

const onTheTag = {
  'safe to stand': 'not to be moved',
  'safe to roll': 'to be pushed or driven at yard pace only, never on the road',
} as const

/**
 * The last action of making safe: a tag that says what may be done with the vehicle, and the keys put away.
 *
 * @source common practice, no source
 */
export const tagAction = (axles: readonly AxleName[], make: keyof typeof onTheTag): Action =>
  makeAction({
    id: 'tag',
    verb: 'tag',
    words: `Hang a tag on the steering wheel: ${onTheTag[make]}, what is undone, who did it and when; put the keys away`,
    place: 'in the cabin',
    how: { says: onTheTag[make] },
    needs: [
      ...axles.map((axle) => ({
        key: keys.support(axle),
        is: make === 'safe to roll' ? supports.onWheels : supports.carried,
        why: 'nobody goes near it before it is carried',
        rule: 'I1' as const,
      })),
      ...(make === 'safe to roll'
        ? [{ key: keys.pedal, is: ['firm'], why: 'it has brakes', rule: 'I18' as const }]
        : []),
    ],
    effects: { [keys.tag]: 'hung', [keys.ignitionKey]: 'put away' },
    records: ['what the tag says, who was told, where the keys are'],
    why: 'the next person does not know what is undone',
  })
