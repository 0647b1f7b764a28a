import { parseLength } from '../quantity/index.ts'
import { accessRefers } from './access-refers.ts'
import { kindOfJointRefers } from './joint-kind-refers.ts'
import { familyOf } from './layouts.ts'
import type { Look, SeenCorner } from './look.ts'

/** Points that stand once, in vehicle axes as they are; all others are mirrored. */
const onceOnly = /^(drop-axis|drag|track-bar|middle-link|roll-axis)-|^shear-centre$/
/** Parts that an axle has once by their nature. */
const ofAxle: readonly string[] = [
  'body',
  'sub-frame',
  'rack',
  'axle beam',
  'steering box',
  'centre link',
  'steering shaft',
  'compensator',
]

/** Names that joints hold, and what cannot be of them. */
export function jointRefers(look: Look): void {
  const { file, say, mustBe } = look
  for (const [id, joint] of Object.entries(file.joints ?? {})) {
    const at = ['joints', id]
    if (!joint) continue
    joint.joins?.forEach((name, i) => {
      mustBe('part', name, [...at, 'joins', i])
    })
    if (joint.joins?.[0] !== undefined && joint.joins[0] === joint.joins[1])
      say([...at, 'joins'], `It joins "${joint.joins[0]}" to itself.`, 'two different parts')
    mustBe('point', joint.at, [...at, 'at'])
    mustBe('adjuster', joint.adjuster, [...at, 'adjuster'])
    if (joint.bush && joint.at === undefined)
      say([...at, 'at'], 'A bush turns about a point, and none is named.', 'the pivot that it stands in')
    const minutes = joint.minutes
    if (minutes && !(minutes[0]! <= minutes[1]! && minutes[1]! <= minutes[2]!))
      say(
        [...at, 'minutes'],
        `The times ${minutes.join(', ')} do not rise.`,
        'low, usual, high, such as [2, 4, 15]',
      )
    adjusterAt(look, id, joint)
    sideOf(look, id, joint)
    accessRefers(look, id, joint)
    kindOfJointRefers(look, id, joint)
  }
}

type Joint = NonNullable<NonNullable<SeenCorner['joints']>[string]>

/** A washer sits on the bolt of the point that it moves. */
function adjusterAt({ file, known, say }: Look, id: string, joint: Joint): void {
  const adjuster = joint.adjuster === undefined ? undefined : file.adjusters?.[joint.adjuster]
  if (adjuster?.kind !== 'eccentric' || !adjuster.moves || adjuster.moves === joint.at) return
  if (joint.at && known.point.includes(joint.at))
    say(
      ['joints', id, 'adjuster'],
      `It sits at "${joint.at}", but adjuster "${joint.adjuster}" moves "${adjuster.moves}".`,
      'the adjuster that moves this point',
    )
}

/** A joint at a point that stands once is on that point's side, and nowhere else. */
function sideOf({ file, say }: Look, id: string, joint: Joint): void {
  if (file.layout === undefined || familyOf(file.layout) !== 'solid axle') return
  if (joint.at === undefined || !onceOnly.test(joint.at)) return
  const text = file.points?.[joint.at]?.at?.[1]
  const across = text === undefined ? 0 : parseLength(text)
  const there = across > 0 ? 'left' : across < 0 ? 'right' : null
  const once = joint.joins?.every((name) => {
    const part = name === undefined ? undefined : file.parts?.[name]
    return part === undefined || part.span === 'axle' || ofAxle.includes(part.kind ?? '')
  })
  const path = ['joints', id, 'side']
  if (joint.side !== undefined && there !== null && joint.side !== there)
    say(path, `It is said to be on the ${joint.side}, but "${joint.at}" lies on the ${there}.`, `"${there}"`)
  else if (joint.side === undefined && !once)
    say(
      path,
      `It is missing: "${joint.at}" stands once, so only one side has this joint.`,
      there ? `"${there}"` : '"left" or "right"',
    )
}
