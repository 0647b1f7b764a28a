import type { Action, Need } from './action.ts'
import type { HoldNode } from './assembly.ts'
import { cautionWords as say } from './caution-words.ts'
import { compressNeeds } from './compress-needs.ts'
import { dropLinkNeeds } from './drop-link-needs.ts'
import { isStrutSpring } from './is-strut-spring.ts'
import { keys } from './keys.ts'
import { looseKnuckleNeeds } from './loose-knuckle-needs.ts'
import { makeAction } from './make-action.ts'
import { supports } from './supports.ts'
import { wheelOffNeeds } from './wheel-off-needs.ts'
import { whereOf } from './where-of.ts'
import type { Work } from './work.ts'

/** The actions on stored energy. @source definition */
export interface EnergyActions {
  readonly jackUnder: () => Action
  readonly letDown: () => Action
  readonly raise: () => Action
  readonly jackAway: () => Action
  readonly compress: (nth: 1 | 2) => Action
  readonly release: (nth: 1 | 2) => Action
  readonly unwind: () => Action
  readonly wind: () => Action
  readonly levellingOff: () => Action
  readonly levellingOn: () => Action
  readonly deflate: () => Action
  readonly letAirIn: () => Action
}

/** A joint that holds: tight, or at least run up with full engagement. */
const holding = ['closed', 'run up', 'final', 'checked']

/**
 * Holding, letting down and putting back the energy of one spring.
 *
 * @source common practice, no source
 */
export function energyActions(work: Work, hold: HoldNode): EnergyActions {
  const { assembly } = work
  const { id, called, axle, side } = hold
  const where = whereOf(hold)
  const energy = keys.energy(id)
  const arm = keys.arm(where)
  const base = { hold: id, axle, side, place: 'at the wheel' } as const
  const carried: Need = {
    key: keys.support(axle),
    is: supports.lifted,
    why: 'the body is carried',
    rule: 'I3',
  }
  const loaded: Need = { key: energy, is: ['held by its set'], why: 'its own joints hold it' }
  const retained: readonly Need[] = hold.joints.map((joint) => ({
    key: keys.joint(joint),
    is: holding,
    why: `it keeps the ${called} in`,
    rule: 'I4',
  }))
  const seated: readonly Need[] = hold.joints
    .filter((joint) => assembly.joints[joint]!.kind.startsWith('tapered'))
    .map((joint) => ({ key: keys.taper(joint), is: ['seated'], why: 'a loose taper jumps', rule: 'I4' }))
  const outside = hold.joints.filter((joint) => work.open.has(joint) && !hold.jackPath.includes(joint))
  const swings: readonly Need[] = outside.map((joint) => ({
    key: keys.joint(joint),
    is: ['open'],
    why: 'the arm swings down',
  }))
  const pivots: readonly Need[] = hold.jackPath.map((joint) => ({
    key: keys.joint(joint),
    is: holding,
    why: 'the arm stands on its pivots',
    rule: 'I3',
  }))
  const wheelOff: readonly Need[] = hold.joints
    .map((joint) => assembly.joints[joint]!)
    .slice(0, 1)
    .flatMap((joint) => wheelOffNeeds(work, { ...joint, side }))
  // Let out with its seats still round it, it is only back where it was.
  const free: readonly Need[] = [...new Set([...hold.joints, ...assembly.touching[id]!])]
    .filter((joint) => work.open.has(joint) || work.bench.has(joint))
    .filter((joint) => assembly.joints[joint]!.kind === 'seat' || isStrutSpring(assembly, hold))
    .map((joint) => ({ key: keys.joint(joint), is: ['open'], why: 'it is out of its seats', rule: 'I4' }))
  const springIn: readonly Need[] =
    assembly.parts[id]!.kind === 'spring'
      ? [{ key: keys.part(id), is: ['fitted', 'new'], why: 'the spring is in its seats' }]
      : []

  return {
    jackUnder: () =>
      makeAction({
        ...base,
        id: `jack under ${where}`,
        verb: 'jack under arm',
        words: `Put the jack under the ${sideOf(hold)}arm, far out, and take the load of the ${called}`,
        tool: 'trolley jack',
        how: { saddle: 'located', coil: 'tethered', hands: 'nobody in line' },
        needs: [carried, { key: keys.jack, is: ['free'], why: 'the jack is free' }, ...pivots, ...wheelOff],
        effects: { [arm]: 'jack under', [energy]: 'held by the jack', [keys.jack]: 'in use' },
        cautions: [say.jackArm],
        records: ['saddle located, coil tethered'],
        why: `it holds the ${called} while its joints are open`,
      }),
    letDown: () =>
      makeAction({
        ...base,
        id: `let down ${id}`,
        verb: 'let down with the jack',
        words: `Lower the jack until the ${called} is slack`,
        tool: 'trolley jack',
        needs: [
          { key: arm, is: ['jack under'], why: 'the jack carries the arm', rule: 'I3' },
          ...pivots,
          ...swings,
          ...looseKnuckleNeeds(work, { id: '', axle, side }),
          ...dropLinkNeeds(work, hold),
        ],
        effects: { [arm]: 'let down', [energy]: 'let down', [keys.jack]: 'free' },
        cautions: [say.letDown, say.jackArm],
        why: `so that the ${called} comes out without load`,
      }),
    raise: () =>
      makeAction({
        ...base,
        id: `raise ${where}`,
        verb: 'raise the arm',
        words: `Raise the ${sideOf(hold)}arm with the jack until its joints meet, the ${called} in its seats`,
        tool: 'trolley jack',
        how: { saddle: 'located', coil: 'tethered', hands: 'nobody in line' },
        needs: [
          carried,
          { key: arm, is: ['let down'], why: 'the arm hangs' },
          { key: keys.jack, is: ['free'], why: 'the jack is free' },
          ...springIn,
          ...pivots,
          ...dropLinkNeeds(work, hold),
        ],
        effects: { [arm]: 'jack under', [energy]: 'held by the jack', [keys.jack]: 'in use' },
        cautions: [say.jackArm],
        records: ['saddle located, coil tethered'],
        why: `it loads the ${called} again while its joints are made`,
      }),
    jackAway: () =>
      makeAction({
        ...base,
        id: `jack away ${where}`,
        verb: 'jack away',
        words: `Lower the jack slowly until the joints carry the ${called}, and take it away`,
        tool: 'trolley jack',
        needs: [{ key: arm, is: ['jack under'], why: 'the jack is there' }, ...retained, ...seated],
        effects: { [arm]: 'free', [energy]: 'held by its set', [keys.jack]: 'free' },
        cautions: [say.letDown],
        why: 'its own joints hold it again',
      }),
    compress: (nth) =>
      makeAction({
        ...base,
        id: `compress ${id} ${nth}`,
        verb: 'compress',
        words:
          nth === 1
            ? `Fit the compressor to the ${called} and take its load`
            : `Compress the ${work.renewed.has(id) ? 'new ' : ''}${called} on the bench`,
        place: nth === 1 && !isStrutSpring(work.assembly, hold) ? 'at the wheel' : 'at the bench',
        tool: 'spring compressor',
        needs: compressNeeds(work, hold, nth, carried),
        effects: {
          [energy]: 'in the compressor',
          ...(nth === 2 && work.renewed.has(id) ? { [keys.swapped(id)]: 'the new one' } : {}),
        },
        cautions: [say.compressor],
        records: ['hooks seated, strap on'],
        why: `it holds the ${called} while its joints are open`,
      }),
    release: (nth) =>
      makeAction({
        ...base,
        id: `release ${id} ${nth}`,
        verb: 'release compressor',
        words:
          nth === 1
            ? `Let the ${work.renewed.has(id) ? 'old ' : ''}${called} out of the compressor on the bench`
            : `Release the compressor evenly and watch the ${called} find its seats`,
        place: nth === 1 || isStrutSpring(work.assembly, hold) ? 'at the bench' : 'at the wheel',
        tool: 'spring compressor',
        needs:
          nth === 1
            ? [
                { key: energy, is: ['in the compressor'], why: 'it is in the compressor' },
                { key: keys.part(id), is: ['off', 'freed'], why: 'it is out of the vehicle' },
                ...free,
              ]
            : [
                { key: energy, is: ['in the compressor'], why: 'it is in the compressor' },
                ...retained,
                ...seated,
                ...(isStrutSpring(work.assembly, hold) ? [] : springIn),
              ],
        effects: { [energy]: nth === 1 ? 'let down' : 'held by its set' },
        cautions: [say.compressor],
        why: nth === 1 ? 'the old spring goes, the new one takes its place' : 'its own joints hold it again',
      }),
    unwind: () =>
      makeAction({
        ...base,
        id: `unwind ${id}`,
        verb: 'unwind',
        words: `Unwind the ${called} at its anchor, counting the turns`,
        place: 'under',
        tool: 'torsion bar tool',
        how: { turns: 'counted', thread: 'measured' },
        needs: [
          carried,
          loaded,
          ...anchorsOf(work, hold).map((joint) => ({
            key: keys.mark(joint),
            is: ['recorded', 'recorded, body side too'],
            why: 'turns and thread give the height back',
            rule: 'I11' as const,
          })),
        ],
        effects: { [energy]: 'let down' },
        cautions: [say.torsionBar],
        records: ['turns, exposed thread'],
        why: `nothing is left in the ${called} when its arm comes off`,
      }),
    wind: () =>
      makeAction({
        ...base,
        id: `wind ${id}`,
        verb: 'wind',
        words: `Wind the ${called} by the turns recorded`,
        place: 'under',
        tool: 'torsion bar tool',
        needs: [carried, { key: energy, is: ['let down'], why: 'it is unwound' }, ...retained, ...seated],
        effects: { [energy]: 'held by its set', [keys.heights]: 'to set' },
        cautions: [say.torsionBar],
        records: ['turns, exposed thread'],
        why: 'it carries the vehicle again',
      }),
    levellingOff: () =>
      makeAction({
        id: 'levelling off',
        verb: 'levelling off',
        words: 'Switch the levelling off, by the maker’s method',
        place: 'in the cabin',
        effects: { [keys.levelling]: 'off' },
        cautions: [say.air],
        why: 'an air-sprung vehicle moves by itself',
      }),
    levellingOn: () =>
      makeAction({
        id: 'levelling on',
        verb: 'levelling on',
        words: 'Switch the levelling on again and see the vehicle find its height',
        place: 'in the cabin',
        needs: Object.values(assembly.holds)
          .filter(({ stores }) => stores === 'air')
          .map((one) => ({ key: keys.energy(one.id), is: ['held by its set'], why: 'the air is in' })),
        effects: { [keys.levelling]: 'on' },
        cautions: [say.air],
        why: 'it was switched off',
      }),
    deflate: () =>
      makeAction({
        ...base,
        id: `deflate ${id}`,
        verb: 'deflate',
        words: `Let the air out of the ${called} and disconnect its line`,
        needs: [carried, loaded, { key: keys.levelling, is: ['off'], why: say.air, rule: 'I12' }],
        effects: { [energy]: 'let down' },
        cautions: [say.air],
        records: ['deflated, and disconnected'],
        why: `nothing is left in the ${called} when its joints open`,
      }),
    letAirIn: () =>
      makeAction({
        ...base,
        id: `let air in ${id}`,
        verb: 'let air in',
        words: `Connect the line of the ${called} and let air in before weight comes on it`,
        needs: [{ key: energy, is: ['let down'], why: 'it is empty' }, ...springIn, ...retained, ...seated],
        effects: { [energy]: 'held by its set' },
        cautions: [say.air],
        why: 'a bellows that is lowered empty folds and tears',
      }),
  }
}

const sideOf = ({ side }: HoldNode) => (side ? `${side} ` : '')

function anchorsOf(work: Work, hold: HoldNode): readonly string[] {
  return Object.values(work.assembly.joints)
    .filter((joint) => joint.kind === 'anchor bolt' && joint.axle === hold.axle && joint.side === hold.side)
    .map(({ id }) => id)
}
