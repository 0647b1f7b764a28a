import { accessNeeds } from './access-needs.ts'
import type { Action, Need } from './action.ts'
import { agrees } from './agrees.ts'
import type { JointNode, PartNode } from './assembly.ts'
import { bodySideToo } from './body-side-too.ts'
import { boxNeeds } from './box-actions.ts'
import { cautionWords as say } from './caution-words.ts'
import { isStrutSpring } from './is-strut-spring.ts'
import { joinedOnBench } from './joined-on-bench.ts'
import { jointsOf } from './joints-of.ts'
import { keys } from './keys.ts'
import { looseFitNeeds } from './loose-fit-needs.ts'
import { makeAction } from './make-action.ts'
import { needsMark } from './needs-mark.ts'
import { supports } from './supports.ts'
import { takeOffCautions } from './take-off-cautions.ts'
import { whereOf } from './where-of.ts'
import type { Work } from './work.ts'

/** The actions on a part. @source definition */
export interface PartActions {
  readonly compareBefore: () => Action
  readonly compareBeside: () => Action
  /** Off together with the parts that stay joined to it. */
  readonly takeOff: (piece: readonly PartNode[]) => Action
  readonly fit: (piece: readonly PartNode[]) => Action
}

const facts = 'side, length, taper, thread, plug'

/**
 * The actions on one part: compared, taken off (a caliper is hung), fitted again.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function partActions(work: Work, part: PartNode): PartActions {
  const { assembly } = work
  const { id, called, axle, side, kind } = part
  const why = work.why[id] ?? 'it is in the goal'
  const base = { part: id, axle, side, place: 'at the wheel' } as const
  const isHung = kind === 'caliper' && !work.renewed.has(id)
  const where = whereOf(part)
  const wheelEffects: Record<string, string> = kind === 'wheel' ? { [keys.wheelOff(axle!)]: 'off once' } : {}
  const hold = assembly.holds[id]
  const inBox = boxNeeds(work).filter(({ key }) => key === keys.box(id))

  return {
    compareBefore: () =>
      makeAction({
        ...base,
        id: `compare before ${id}`,
        verb: 'compare',
        place: 'at the bench',
        words: `Compare the new ${called} with what the vehicle has: ${facts}`,
        how: { when: 'before lifting' },
        needs: axle
          ? [
              {
                key: keys.support(axle),
                is: supports.onWheels,
                why: 'a wrong part found later costs the lift',
                rule: 'I16',
              },
              ...inBox,
            ]
          : inBox,
        effects: { [keys.compared(id)]: 'before lifting' },
        records: [facts],
        cautions: [say.oldThread],
        why: 'a wrong part is found before the vehicle is in the air',
      }),
    compareBeside: () =>
      makeAction({
        ...base,
        id: `compare beside ${id}`,
        verb: 'compare',
        place: 'at the bench',
        words: `Lay the new ${called} beside the old: ${facts}`,
        how: { when: 'beside the old' },
        needs: [
          { key: keys.part(id), is: ['off', 'freed'], why: 'the old one is off' },
          { key: keys.compared(id), is: ['before lifting'], why: 'it was compared before', rule: 'I16' },
          ...inBox,
          ...jointsOf(assembly, id)
            .filter((joint) => work.open.has(joint.id) || work.bench.has(joint.id))
            .map((joint) => ({
              key: keys.joint(joint.id),
              is: ['open'],
              why: 'the old one is free of everything',
            })),
        ],
        effects: { [keys.compared(id)]: 'beside the old' },
        records: [facts],
        why: 'a wrong part is found before it is fitted',
      }),
    takeOff: (piece) =>
      makeAction({
        ...base,
        id: `take off ${id}`,
        verb: isHung ? 'hang' : 'take off',
        words: isHung
          ? `Take the ${called} off its carrier and hang it on a hook`
          : seatsOf(work, part).length > 0
            ? `Take the ${called} out of its seats${withOthers(piece, id)}`
            : `Take the ${called} off${withOthers(piece, id)}`,
        needs: [
          {
            key: keys.part(id),
            is: isHung ? ['fitted', 'new'] : ['fitted', 'new', 'freed', 'hung'],
            why: 'it is there',
          },
          ...takeOffNeeds(work, part, piece),
          ...seatsOf(work, part).flatMap((seat) => seatNeeds(work, seat, 'out')),
        ],
        effects: {
          ...Object.fromEntries(seatsOf(work, part).map((seat) => [keys.joint(seat.id), 'open'])),
          ...Object.fromEntries(piece.map((one) => [keys.part(one.id), one.id === id ? 'off' : 'freed'])),
          ...(isHung
            ? { [keys.part(id)]: 'hung', [keys.pads(where)]: 'moved', [keys.pedal]: 'to pump' }
            : {}),
          ...((kind === 'caliper' && !isHung) || kind === 'brake pads' ? { [keys.pedal]: 'to pump' } : {}),
          ...wheelEffects,
          ...(piece.some(({ file }) => file.heavy) ? { [keys.tail]: 'none' } : {}),
        },
        cautions: takeOffCautions(
          part,
          hold !== undefined && !isStrutSpring(assembly, hold) && work.standIns[id] === 'spring compressor',
        ),
        why,
      }),
    fit: (piece) =>
      makeAction({
        ...base,
        id: `fit ${id}`,
        verb: 'fit',
        words: `Fit the ${work.renewed.has(id) ? 'new ' : ''}${called}${
          seatsOf(work, part).length > 0 ? ' in its seats, turned as it was' : ''
        }${withOthers(piece, id)}`,
        needs: [
          ...piece.flatMap((one): readonly Need[] => [
            { key: keys.part(one.id), is: ['off', 'freed', 'hung'], why: 'it is off' },
            ...(work.renewed.has(one.id)
              ? [
                  {
                    key: keys.compared(one.id),
                    is: ['beside the old'],
                    why: 'it is the right one',
                    rule: 'I16',
                  } as const,
                ]
              : []),
          ]),
          ...(axle
            ? [
                {
                  key: keys.support(axle),
                  is: supports.lifted,
                  why: 'the body is carried',
                  rule: 'I1',
                } as const,
              ]
            : []),
          ...joinedOnBench(work, piece),
          ...releasedIn(work, piece),
          ...(kind === 'caliper' ? behindIt(work, part) : []),
          ...(kind === 'wheel'
            ? [{ key: keys.arm(where), is: ['free'], why: 'the jack is away', custom: true } as const]
            : []),
          ...(hold?.loose && !isStrutSpring(assembly, hold) ? looseFitNeeds(work, part) : []),
          ...seatsOf(work, part).flatMap((seat) => seatNeeds(work, seat, 'in')),
        ],
        effects: {
          ...Object.fromEntries(
            piece.map((one) => [keys.part(one.id), work.renewed.has(one.id) ? 'new' : 'fitted']),
          ),
          ...Object.fromEntries(seatsOf(work, part).map((seat) => [keys.joint(seat.id), 'final'])),
        },
        cautions: kind === 'wheel' ? [say.wheel] : [],
        why: `the ${called} ${agrees(called, 'was', 'were')} taken off`,
      }),
  }
}

function withOthers(piece: readonly PartNode[], id: string): string {
  const others = piece.filter((part) => part.id !== id).map(({ called }) => called)
  return others.length > 0 ? `, with the ${others.join(' and the ')} on it` : ''
}

/** A strut goes in with its spring in its seats, not in a compressor. */
const releasedIn = ({ assembly, standIns }: Work, piece: readonly PartNode[]): readonly Need[] =>
  piece
    .flatMap(({ id }) => assembly.holds[id] ?? [])
    .filter((hold) => isStrutSpring(assembly, hold) && standIns[hold.id] === 'spring compressor')
    .map(({ id, called }) => ({
      key: keys.energy(id),
      is: ['held by its set'],
      why: `the ${called} is out of the compressor, in its seats`,
    }))

function takeOffNeeds(work: Work, part: PartNode, piece: readonly PartNode[]): readonly Need[] {
  const ids = piece.map(({ id }) => id)
  const open = piece
    .flatMap(({ id }) => jointsOf(work.assembly, id))
    .filter(
      (joint) =>
        work.open.has(joint.id) &&
        // A spring leaves its own seats as it comes off.
        !(
          joint.kind === 'seat' && joint.joins.some((one) => ids.includes(one) && work.assembly.holds[one])
        ) &&
        !joint.joins.every((one) => ids.includes(one)),
    )
  const hold = work.assembly.holds[part.id]
  return [
    ...[...new Set(open.map(({ id }) => id))].map((id) => ({
      key: keys.joint(id),
      is: ['open'],
      why: `it holds the ${part.called}`,
    })),
    ...(part.axle
      ? [
          {
            key: keys.support(part.axle),
            is: supports.lifted,
            why: 'the body is carried',
            rule: 'I1',
          } as const,
        ]
      : []),
    ...(piece.some(({ file }) => file.heavy)
      ? [{ key: keys.tail, is: ['set'], why: say.heavy, rule: 'I1' } as const]
      : []),
    ...(hold?.loose && !isStrutSpring(work.assembly, hold)
      ? [
          {
            key: keys.energy(part.id),
            is: ['let down', 'in the compressor'],
            why: 'nothing may be left in it',
            rule: 'I3',
          } as const,
        ]
      : []),
    ...(behindCaliper.includes(part.kind) ? hungCalipers(work, part) : []),
  ]
}

const behindCaliper: readonly PartNode['kind'][] = ['knuckle', 'hub', 'disc', 'brake carrier']

/** The caliper of a knuckle or disc that comes off hangs on its hook by then. */
function hungCalipers(work: Work, knuckle: PartNode): readonly Need[] {
  return Object.values(work.assembly.parts)
    .filter((part) => part.kind === 'caliper' && whereOf(part) === whereOf(knuckle) && work.off.has(part.id))
    .map((part) => ({ key: keys.part(part.id), is: ['hung', 'off'], why: say.hose, rule: 'I6' as const }))
}

/** The seats that a spring leaves and finds on the vehicle, as it comes out and goes in. */
const seatsOf = (work: Work, part: PartNode): readonly JointNode[] =>
  part.kind === 'spring'
    ? jointsOf(work.assembly, part.id).filter(({ id, kind }) => kind === 'seat' && work.open.has(id))
    : []

function seatNeeds(work: Work, seat: JointNode, way: 'out' | 'in'): readonly Need[] {
  const mark: readonly Need[] =
    way === 'out' && needsMark(seat)
      ? [
          {
            key: keys.mark(seat.id),
            is: bodySideToo(work, seat)
              ? ['recorded, body side too']
              : ['recorded', 'recorded, body side too'],
            why: 'how it was is lost once it moves',
            rule: 'I15',
          },
        ]
      : []
  return [...mark, ...accessNeeds(work, seat)]
}

/** A caliper goes back over its disc once that is there. */
const behindIt = (work: Work, caliper: PartNode): readonly Need[] =>
  Object.values(work.assembly.parts)
    .filter(
      (part) =>
        behindCaliper.includes(part.kind) && whereOf(part) === whereOf(caliper) && work.off.has(part.id),
    )
    .map((part) => ({
      key: keys.part(part.id),
      is: ['fitted', 'new'],
      why: `it goes over the ${part.called}`,
    }))
