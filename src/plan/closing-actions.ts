import { accessNeeds } from './access-needs.ts'
import type { Action, Need } from './action.ts'
import { agrees } from './agrees.ts'
import type { JointNode } from './assembly.ts'
import { capturedNeeds } from './captured-needs.ts'
import { cautionWords as say } from './caution-words.ts'
import { closingWords } from './closing-words.ts'
import { finalNeeds } from './final-needs.ts'
import { hasPin } from './has-pin.ts'
import { holdNeeds } from './hold-needs.ts'
import { isHome } from './is-home.ts'
import { jointHabits } from './joint-habits.ts'
import { keys } from './keys.ts'
import { knuckleHeldNeeds } from './knuckle-held-needs.ts'
import { makeAction } from './make-action.ts'
import { mendedNeeds } from './mended-needs.ts'
import type { RideRoute } from './ride-route.ts'
import { spannerFor } from './spanner-for.ts'
import { startedTogether } from './started-together.ts'
import { supports } from './supports.ts'
import { wheelOffNeeds } from './wheel-off-needs.ts'
import type { Work } from './work.ts'

/** The actions that close a joint again: the reverse of those that undo it. @source definition */
export interface ClosingActions {
  readonly start: () => Action
  /** Run up, or pushed home where nothing is tightened. */
  readonly close: () => Action
  readonly final: (route: RideRoute) => Action
  readonly pin: () => Action
  readonly check: () => Action
}

/**
 * The actions that close one joint, generated as the reverse of its undoing: same access, same hold of stored energy,
 * both parts in place; then final in the position that its kind asks for, pin and second look.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function closingActions(work: Work, joint: JointNode): ClosingActions {
  const { assembly } = work
  const { id, called, axle, side, file } = joint
  const habit = jointHabits[joint.kind]
  const onBench = work.bench.has(id)
  const place = onBench ? 'at the bench' : joint.place
  const base = { joint: id, axle, side, place } as const
  const isNew =
    file.reuse === 'new' || work.branches.some((one) => one.fastener && one.joint?.id === joint.id)
  const isUnion = joint.kind === 'hydraulic union'
  const bothIn: readonly Need[] = joint.joins.map((part) =>
    onBench
      ? work.renewed.has(part)
        ? {
            key: keys.compared(part),
            is: ['beside the old'],
            why: 'the new part is the right one',
            rule: 'I16',
          }
        : { key: keys.part(part), is: ['off', 'freed'], why: 'it is done on the bench' }
      : { key: keys.part(part), is: ['fitted', 'new'], why: 'both parts are in place' },
  )
  const reach: readonly Need[] = onBench
    ? [
        ...joint.joins.map((part) => ({
          key: keys.part(part),
          is: ['off', 'freed'],
          why: 'it is done on the bench',
        })),
        ...accessNeeds(work, joint),
      ]
    : joint.place === 'in the cabin'
      ? accessNeeds(work, joint)
      : [
          { key: keys.support(axle), is: supports.lifted, why: 'the body is carried', rule: 'I1' },
          ...accessNeeds(work, joint),
          ...wheelOffNeeds(work, joint),
          ...knuckleHeldNeeds(work, joint),
        ]
  // Where the arm is raised until its joints meet, that is how they meet, not a rule.
  const held: readonly Need[] = [
    ...holdNeeds(work, joint).map((need) => ({ ...need, custom: true as const })),
    ...capturedNeeds(work, joint),
  ]
  const torque = { tool: closingWords.tool(joint) } as const
  const shaft = joint.joins.some((part) => assembly.parts[part]?.kind === 'steering shaft')

  return {
    start: () =>
      makeAction({
        ...base,
        id: `start ${id}`,
        verb: 'start',
        words: `Start the ${called} by hand`,
        needs: [
          { key: keys.joint(id), is: ['open'], why: 'it is open' },
          ...mendedNeeds(work, joint),
          ...bothIn,
          ...reach,
          ...held,
        ],
        effects: { [keys.joint(id)]: 'started', ...(isNew ? { [keys.fastener(id)]: 'new' } : {}) },
        cautions: isNew ? [say.singleUse] : [],
        why: 'all are started before the first is run up',
      }),
    close: () =>
      makeAction({
        ...base,
        id: `close ${id}`,
        verb: habit.threaded ? 'run up' : 'connect',
        words: closingWords.close(joint, isNew),
        tool: spannerFor(joint),
        needs: [
          { key: keys.joint(id), is: ['open', 'started'], why: 'it is open' },
          ...mendedNeeds(work, joint),
          ...startedTogether(work, joint)
            .filter((beside) => beside.id !== id)
            .map((beside) => ({
              key: keys.joint(beside.id),
              is: ['started', 'run up', 'final', 'checked'],
              why: 'all are started before the first is run up',
            })),
          ...bothIn,
          ...reach,
          ...held,
        ],
        effects: {
          [keys.joint(id)]: habit.threaded ? 'run up' : 'final',
          ...(habit.taper ? { [keys.taper(id)]: 'seated' } : {}),
          ...(isNew ? { [keys.fastener(id)]: 'new' } : {}),
          ...(isUnion ? { [keys.line(id)]: 'to bleed' } : {}),
          ...(shaft ? { [keys.shaft]: 'whole' } : {}),
          ...asMarked(work, joint),
        },
        minutes: file.minutes ?? habit.closes,
        cautions: [
          ...(isNew ? [say.singleUse] : []),
          ...(habit.taper ? ['Taper and hole clean and dry.'] : []),
          ...(joint.kind === 'wheel nuts' ? [say.wheel] : []),
        ],
        why: `the ${called} ${agrees(called, 'was', 'were')} undone`,
      }),
    final: (route) =>
      makeAction({
        ...base,
        ...torque,
        id: `final ${id}`,
        verb: 'final',
        place: placeOfFinal(joint, route, onBench),
        words: closingWords.final(joint),
        how: { method: closingWords.method(joint), ...(shaft ? { seated: 'in its groove' } : {}) },
        needs: [
          { key: keys.joint(id), is: ['run up'], why: 'it is run up' },
          ...finalNeeds(work, joint, route, reach),
        ],
        effects: { [keys.joint(id)]: 'final' },
        minutes: habit.finals,
        cautions: closingWords.cautions(joint, route),
        records: ['torque as set on the wrench, position, hand, time'],
        why: 'run up is not tight',
      }),
    pin: () =>
      makeAction({
        ...base,
        id: `pin ${id}`,
        verb: 'pin',
        words: `Fit a new pin to the ${called} and bend its legs`,
        tool: 'pliers',
        how: { pin: 'new' },
        needs: [
          { key: keys.joint(id), is: ['final'], why: 'the slot is found by tightening', rule: 'I9' },
          ...(isHome(joint) ? reach : []),
        ],
        effects: { [keys.pin(id)]: 'new, legs bent' },
        cautions: [say.castle],
        records: ['pin in, legs bent'],
        why: 'without it the nut comes off',
      }),
    check: () =>
      makeAction({
        ...base,
        id: `check ${id}`,
        verb: 'second check',
        words: `Second look at the ${called}: mark, ${hasPin(joint) ? 'pin, ' : ''}record`,
        how: { by: work.checker, method: 'mark and record' },
        needs: [
          { key: keys.joint(id), is: ['final'], why: 'it is final' },
          ...(place === 'under'
            ? [
                {
                  key: keys.support(axle),
                  is: supports.handsUnder,
                  why: 'it is looked at from under',
                  rule: 'I1',
                } as const,
              ]
            : []),
          ...(hasPin(joint)
            ? [{ key: keys.pin(id), is: ['new, legs bent', 'in'], why: 'its pin is in' }]
            : []),
        ],
        effects: { [keys.joint(id)]: 'checked' },
        records: ['who looked, and when'],
        why: 'loose, it drops a wheel, the steering or the brakes',
      }),
  }
}

/** A shim, a wedge or a sleeve goes back as marked; what is turned or slid is set later, by its readings. */
const asMarked = (work: Work, joint: JointNode): Record<string, string> =>
  Object.fromEntries(
    Object.values(work.assembly.adjusters)
      .filter((one) => one.joints.includes(joint.id) && !joint.adjusts)
      .map((one) => [keys.adjuster(one.id), 'as marked']),
  )

/** With a jack at ride height nobody is under it; what was run up on the bench is made final on the vehicle. */
function placeOfFinal(joint: JointNode, route: RideRoute, onBench: boolean): Action['place'] {
  if (joint.final === 'at ride height') return route === 'jack under the arm' ? 'at the wheel' : joint.place
  return onBench && !joint.adjusts ? 'at the bench' : joint.place
}
