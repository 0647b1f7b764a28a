import { accessNeeds } from './access-needs.ts'
import type { Need } from './action.ts'
import type { JointNode } from './assembly.ts'
import { cautionWords as say } from './caution-words.ts'
import { isHome } from './is-home.ts'
import { keys } from './keys.ts'
import type { RideRoute } from './ride-route.ts'
import { supports } from './supports.ts'
import type { Work } from './work.ts'

/**
 * What must be so before a joint is made final: the position that its kind asks for, its reach, the adjuster it holds.
 *
 * @param reach what it takes to reach it with the axle lifted
 * @source common practice, no source
 */
export const finalNeeds = (
  work: Work,
  joint: JointNode,
  route: RideRoute,
  reach: readonly Need[],
): readonly Need[] => [
  ...(work.bench.has(joint.id) && !joint.adjusts && joint.final !== 'at ride height'
    ? reach
    : finalPosition(work, joint, route, reach)),
  ...adjusterNeeds(work, joint),
]

function finalPosition(
  work: Work,
  joint: JointNode,
  route: RideRoute,
  reach: readonly Need[],
): readonly Need[] {
  const { axle } = joint
  // At ride height the corner is whole: only where the steering stands may still be asked for.
  const steered = accessNeeds(work, joint, true).filter(({ key }) => key === keys.steering)
  switch (joint.final) {
    case 'at ride height':
      if (route === 'jack under the arm')
        return [
          {
            key: keys.arm(`${axle} ${joint.side}`),
            is: ['raised to ride height'],
            why: say.bonded,
            rule: 'I7',
          },
          ...wheelOff(work, joint),
          ...steered,
        ]
      return [
        {
          key: keys.support(axle),
          is: joint.place === 'under' ? ['wheels on ramps or over the pit'] : supports.onWheels,
          why: say.bonded,
          rule: 'I7',
        },
        {
          key: keys.settled(axle),
          is: ['yes'],
          why: 'a wheel that was lowered stands scrubbed in',
          rule: 'I7',
        },
        {
          key: keys.heights,
          is: ['not recorded', 'recorded', 'set'],
          why: 'its height is set first',
          rule: 'I7',
        },
        ...steered,
      ]
    case 'wheels straight':
      return [
        ...(isHome(joint) ? reach : [standing(joint), ...steered]),
        { key: keys.steering, is: ['straight'], why: say.straight, rule: 'I7' },
      ]
    case 'on the ground':
      return [
        {
          key: keys.support(axle),
          is: supports.onWheels,
          why: 'the ground holds the wheel',
          ...(joint.kind === 'wheel nuts' ? { rule: 'I2' as const } : {}),
          ...(joint.kind === 'axle nut' ? { rule: 'I14' as const } : {}),
        },
      ]
    default:
      return isHome(joint) ? reach : [standing(joint), ...steered]
  }
}

const standing = ({ axle, place }: JointNode): Need => ({
  key: keys.support(axle),
  is: place === 'under' ? ['wheels on ramps or over the pit'] : supports.onWheels,
  why: 'it is set on its wheels',
})

/** With the corner raised by a jack, wheel and shields are still off. */
const wheelOff = (work: Work, joint: JointNode): readonly Need[] =>
  accessNeeds(work, joint).filter(({ key }) =>
    Object.values(work.assembly.parts).some(
      (part) => key === keys.part(part.id) && (part.kind === 'wheel' || part.kind === 'shield'),
    ),
  )

/** A joint that holds an adjuster is final after the last move, a lock nut after toe. */
function adjusterNeeds(work: Work, joint: JointNode): readonly Need[] {
  if (!joint.adjusts) return []
  return Object.values(work.assembly.adjusters)
    .filter((adjuster) => adjuster.joints.includes(joint.id))
    .flatMap((adjuster): readonly Need[] =>
      adjuster.sets === 'toe'
        ? [{ key: keys.adjuster(adjuster.id), is: ['set'], why: 'lock nuts come after toe', rule: 'I17' }]
        : [
            {
              key: keys.adjuster(adjuster.id),
              is: ['set'],
              why: 'it carries an adjuster, and stays run up until the last move',
              rule: 'I7',
            },
          ],
    )
}
