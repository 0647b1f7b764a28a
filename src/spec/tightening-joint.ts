import type { Corner } from '../corner/index.ts'
import { type Joint, type JointFacts, type Position, parseThread, type TaperedStud } from '../fasten/index.ts'
import { deg, metre, Nm, type Radian, Refusal, rad } from '../quantity/index.ts'
import type { Spec } from './spec-schema.ts'

type Tightening = NonNullable<NonNullable<Spec['tightening']>['front']>[string]

/** Where the sheet does not say how far off a turn may be; own choice. */
const TURN = deg(5)

/**
 * How far off a turn after a torque may be: as the sheet says, else 5° either way.
 *
 * @returns rad; half-width
 * @source definition; where the sheet is silent: common practice, no source
 */
export const turnWithin = (tightening: Tightening): Radian =>
  tightening.procedure === 'torque then angle' && tightening.within ? tightening.within.value : TURN

/**
 * A joint of a corner model with what the sheet says of it, as the fasten room takes it: its steps, its checks and
 * its refusals then speak for this joint. Between a low and a high figure the middle is aimed at.
 *
 * @param joint its name in the corner model
 * @returns kind and procedure as they were typed, even where they do not go together: `checkJoint` refuses that
 * @source own derivation: docs/methods/bolt-book.md
 */
export function tighteningJoint(corner: Corner, joint: string, tightening: Tightening): Joint {
  const model = corner.joints[joint]!
  const positions: readonly Position[] = [
    ...placed(tightening.position ?? model.final),
    ...(model.kind === 'wheel nuts' ? (['on the ground'] as const) : []),
    ...(model.adjuster === undefined ? [] : (['after the last move'] as const)),
  ]
  const facts: JointFacts = {
    name: model.name ?? joint.replaceAll('-', ' '),
    thread: threadOf(model.thread),
    strength: model.class ?? null,
    positions: [...new Set(positions)],
    singleUse: model.reuse === 'new',
    condition: tightening.condition ?? null,
    rubber: !model.bush?.bonded
      ? 'none'
      : positions.includes('wheels straight')
        ? 'tie-rod end'
        : 'bonded bush',
  }
  const kind = model.kind.startsWith('tapered stud')
    ? 'tapered stud'
    : model.kind === 'adjustable taper-roller hub'
      ? 'adjustable taper-roller hub'
      : 'bolted'
  // From two files kind and procedure may come apart; the fasten room says so.
  return { ...facts, kind, procedure: procedureOf(tightening, model.slots) } as Joint
}

const placed = (position: Tightening['position'] | Corner['joints'][string]['final']): readonly Position[] =>
  position === undefined || position === 'any position'
    ? []
    : [position === 'at ride height' ? 'ride height' : position]

/** Slots that most castle nuts have, and one hole through the stud. DIN 937, note under the table. */
const SLOTS = 6

function procedureOf(tightening: Tightening, slots: number | undefined): Joint['procedure'] {
  const between = (low: number, high: number) => ({
    torque: Nm((low + high) / 2),
    floor: Nm(low),
    ceiling: Nm(high),
  })
  switch (tightening.procedure) {
    case 'torque':
      return { kind: 'torque', stated: between(tightening.low.value, tightening.high.value) }
    case 'torque then angle':
      return {
        kind: 'torque then angle',
        stated: { torque: tightening.torque.value },
        turn: { angle: tightening.angle.value, within: turnWithin(tightening) },
      }
    case 'stages':
      return {
        kind: 'stages',
        stages: tightening.stages.map(({ value }) => ({ by: 'torque', torque: value })),
      }
    case 'castle slot':
      return {
        kind: 'castle slot',
        floor: tightening.low.value,
        ceiling: tightening.high.value,
        slots: slots ?? SLOTS,
        holes: [rad(0)],
      } satisfies TaperedStud['procedure']
    case 'hand snug':
      return { kind: 'hand snug' }
    case 'seat and back off':
      return {
        kind: 'seat and back off',
        seat: tightening.seat.value,
        back: { least: tightening.back[0].value, most: tightening.back[1].value },
        bringUpTo: tightening.bringUpTo?.value ?? null,
        endFloat: tightening.endFloat
          ? { low: metre(tightening.endFloat[0].value), high: metre(tightening.endFloat[1].value) }
          : null,
      }
  }
}

/** A thread that cannot be read is no reason to stop: the typed value then goes unchecked. */
function threadOf(text: string | undefined): JointFacts['thread'] {
  if (text === undefined) return null
  try {
    return parseThread(text)
  } catch (refusal) {
    if (refusal instanceof Refusal) return null
    throw refusal
  }
}
