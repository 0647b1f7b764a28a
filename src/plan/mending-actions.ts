import type { Action, Need } from './action.ts'
import type { JointNode } from './assembly.ts'
import { cautionWords as say } from './caution-words.ts'
import type { Branch } from './failure-branch.ts'
import { jointsOf } from './joints-of.ts'
import { keys } from './keys.ts'
import { makeAction } from './make-action.ts'
import { supports } from './supports.ts'
import type { ThreePoint } from './three-point.ts'
import { wheelOffNeeds } from './wheel-off-needs.ts'
import type { Work } from './work.ts'

const off = ['off', 'freed']
/** @source from memory */
const pressing: ThreePoint = [15, 30, 75]
/** @source from memory */
const drawing: ThreePoint = [10, 20, 45]

/**
 * What is done to a joint that failed before it is closed again: a new bush pressed in, a new wheel stud drawn in, and a
 * look at what stays. Where that look is bad the work stops.
 *
 * @returns nothing for a joint that did not fail
 * @source common practice, no source
 */
export function mendingActions(work: Work, joint: JointNode): readonly Action[] {
  const own = work.branches.filter((one) => one.joint?.id === joint.id)
  const mended = own.find((one) => one.mended && !work.renewed.has(one.mended.part))
  const looked = [...new Set(own.flatMap(({ look }) => look ?? []))]
  return [
    ...(mended ? [mending(work, joint, mended)] : []),
    ...(looked.length > 0 ? [look(work, joint, own, looked)] : []),
  ]
}

function mending(work: Work, joint: JointNode, { mended, failure }: Branch): Action {
  const part = work.assembly.parts[mended!.part]!
  const base = {
    joint: joint.id,
    part: part.id,
    axle: joint.axle,
    side: joint.side,
    verb: 'mend',
    effects: { [keys.mending(joint.id)]: 'mended' },
    why: `${failure.what}: it was lost as the joint was undone`,
  } as const
  const isOpen: Need = { key: keys.joint(joint.id), is: ['open'], why: 'it is open' }
  if (mended!.what === 'bush')
    return makeAction({
      ...base,
      id: `mend ${joint.id}`,
      words: `Press the old bush out of the ${part.called} and the new one in, turned as the old one sat`,
      place: 'at the bench',
      tool: 'press',
      needs: [isOpen, { key: keys.part(part.id), is: off, why: 'it lies under the press' }],
      minutes: pressing,
      cautions: [
        'Goggles on; the press pushes on the sleeve’s rim, never on rubber. No flame to burn the old one out.',
      ],
      records: ['new bush: its marks and how it is turned'],
    })
  const discs = jointsOf(work.assembly, part.id)
    .flatMap(({ joins }) => joins)
    .filter((id) => work.assembly.parts[id]!.kind === 'disc' && work.off.has(id))
  return makeAction({
    ...base,
    id: `mend ${joint.id}`,
    words: `Press the old stud out of the ${part.called} and draw the new one in, home against the flange`,
    place: 'at the wheel',
    tool: 'stud puller',
    needs: [
      isOpen,
      { key: keys.support(joint.axle), is: supports.lifted, why: 'the body is carried', rule: 'I1' },
      ...wheelOffNeeds(work, joint),
      ...discs.map((id): Need => ({ key: keys.part(id), is: off, why: 'the stud goes through it' })),
    ],
    minutes: drawing,
    cautions: [
      'Pressed, not hammered: the blow goes through the bearing.',
      'Where there is no room behind the flange the hub comes off: plan again with the hub.',
    ],
    records: ['new stud: thread, length, splines as the old one'],
  })
}

function look(work: Work, joint: JointNode, own: readonly Branch[], looked: readonly string[]): Action {
  const onBench = work.bench.has(joint.id)
  return makeAction({
    id: `look ${joint.id}`,
    verb: 'look',
    joint: joint.id,
    axle: joint.axle,
    side: joint.side,
    place: onBench ? 'at the bench' : joint.place,
    words: `Stop and look at ${looked.join('; ')}`,
    tool: 'lamp',
    how: { stop: 'where it is bad' },
    needs: [
      { key: keys.joint(joint.id), is: ['open'], why: 'it is open' },
      ...(onBench
        ? []
        : [
            {
              key: keys.support(joint.axle),
              is: supports.lifted,
              why: 'the body is carried',
              rule: 'I1',
            } as const,
            ...wheelOffNeeds(work, joint),
          ]),
    ],
    effects: { [keys.look(joint.id)]: 'sound' },
    cautions: ['Bad: nothing goes back. Write it down and plan again; the part comes new.', say.shock],
    records: [...new Set(own.map(({ failure }) => `${failure.what}: what was found, with a photo`))],
    why: 'what failed once has often spoilt what it sat in',
  })
}
