import { type Joint, type Step, secondCheckOf } from '../fasten/index.ts'
import type { BoltLine } from '../job/index.ts'
import { exactText } from '../quantity/index.ts'
import type { DoingAct } from './bolt-sheet.ts'
import { torque } from './doing-figures.ts'
import type { ChosenWrench } from './wrench-for.ts'

type Entry = NonNullable<DoingAct['entry']>

/** What a joint's acts are made from. */
export interface ActsOf {
  readonly line: BoltLine
  readonly joint: Joint
  /** All steps of the joint, and the place of the one that comes now. */
  readonly steps: readonly Step[]
  readonly now: number
  readonly chosen: ChosenWrench | null
  /** Something keeps it from being tightened. */
  readonly blocked: boolean
}

/**
 * The acts of a joint from the one that comes now on, each with the bare entry that says it was done. Run up, floor,
 * slot and pin are touches of their own.
 */
export function doingActs({ line, joint, steps, now, chosen, blocked }: ActsOf): readonly DoingAct[] {
  const at = { joint: line.joint, wheel: line.wheel }
  const from = steps.findIndex(({ act }) => act !== 'fit' && act !== 'run up')
  const { positions } = line.required
  const standing = positions.length > 0 ? { position: positions } : {}
  const where = positions.length > 0 ? ` ${positions.join(', ')}` : ''
  const given = (step: Step) => (chosen ? torqueOf(step, chosen) : {})
  const entry = (kind: string, data: object): Entry => ({ kind, data: { ...at, ...data } })
  const lastTorque = steps.findLast(({ act }) => act === 'pull' || act === 'bring up')
  const acts = steps.slice(now).map((step, i): DoingAct => {
    const index = now + i
    const place = index - from
    const last = steps.slice(index + 1).every(({ act }) => act === 'pin')
    const ready = i === 0 && !(blocked && index >= from && step.act !== 'pin')
    const stage = (number: number, data: object): Entry =>
      last
        ? entry('tightened', { stage: 'final', ...standing, ...data })
        : entry('tightened', { stage: 'stage', number, ...standing, ...data })
    switch (step.act) {
      case 'fit':
        return {
          label: 'New fastener fitted',
          ready,
          entry: entry('tightened', { stage: 'started', fastener: 'new' }),
        }
      case 'run up':
        return { label: 'Run up', ready, entry: entry('tightened', { stage: 'run up' }) }
      case 'snug':
        return { label: `Snug${where}`, ready, entry: stage(1, {}) }
      case 'pin':
        return { label: 'Pin in, legs bent', ready, entry: entry('pinned', { pin: 'new', legsBent: true }) }
      case 'to slot':
        // On the way nobody knows the torque: the floor's entry has it.
        return { label: 'Slot meets the hole', ready, entry: stage(2, hands(chosen)) }
      case 'turn':
        return {
          label: `Turned by ${angleText(step)}${last ? where : ''}`,
          ready,
          entry: stage(place + 1, {
            angle: angleText(step),
            ...(last && lastTorque ? recorded(line, given(lastTorque)) : {}),
          }),
        }
      case 'seat':
        return { label: 'Seated, hub turning', ready, entry: stage(1, given(step)) }
      case 'back off':
        return { label: 'Backed off', ready, entry: stage(2, {}) }
      case 'bring up':
        return { label: 'Brought up', ready, entry: stage(3, given(step)) }
      case 'end float':
        return {
          label: 'End float read',
          ready,
          entry: stage(4, lastTorque ? recorded(line, given(lastTorque)) : {}),
          asks: [{ path: 'endFloat', label: 'End float, on the dial', text: '0.00 mm' }],
        }
      default: {
        const castle = joint.procedure.kind === 'castle slot'
        const label = castle ? 'Floor reached' : last ? `Final${where}` : `Stage ${place + 1} done`
        return { label, ready, entry: stage(place + 1, given(step)) }
      }
    }
  })
  return acts
}

/** Two ways to look a second time, and one when it did not pass. */
export function lookActs(line: BoltLine, joint: Joint | null): readonly DoingAct[] {
  const said = joint ? secondCheckOf(joint) : 'felt by hand'
  const how =
    said === 'pulled again at the same setting'
      ? 'pulled again'
      : said === 'mark and record'
        ? 'mark and record'
        : 'looked at and felt'
  const look = (label: string, by: string, passed: boolean): DoingAct => ({
    label,
    ready: true,
    entry: { kind: 'checked', data: { joint: line.joint, wheel: line.wheel, by, how, passed } },
  })
  return [
    look('Second look: passed', 'another person', true),
    look('Second look by the same person, later: passed', 'the same person, later', true),
    look('Second look: not passed', 'another person', false),
  ]
}

/** Undoing, with what keeps a taper from flying apart. */
export function undoAct(line: BoltLine): DoingAct {
  const taper = line.kind.startsWith('tapered stud')
  return {
    label: taper ? 'On a few threads' : 'Undone',
    ready: true,
    entry: {
      kind: 'undone',
      data: { joint: line.joint, wheel: line.wheel, to: taper ? 'on a few threads' : 'open' },
    },
  }
}

const angleText = (step: Step): string =>
  exactText({ value: step.figures[0]!.angle!, kind: 'angle', unit: '°' })

/** What a wrench set to a mark gives, and what it is set to. */
function torqueOf({ figures: [figure] }: Step, chosen: ChosenWrench): Readonly<Record<string, unknown>> {
  const { ranked } = chosen
  if (!figure?.onWrench) return {}
  const { unit } = ranked.wrench
  const near = ranked.received.value * (figure.onWrench / ranked.setting)
  return {
    torque: ranked.adapter
      ? exactText({ value: Number(near.toFixed(2)), kind: 'torque', unit: 'N·m' })
      : plain(torque(figure.onWrench, unit)),
    setting: plain(torque(figure.onWrench, unit)),
    ...hands(chosen),
  }
}

/** A real minus or a narrow space has no place in a file. */
const plain = (text: string) => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ')

function hands(chosen: ChosenWrench | null): Readonly<Record<string, unknown>> {
  if (!chosen) return {}
  const adapter = chosen.adapterId === null ? {} : { adapter: { adapter: chosen.adapterId, angle: '0°' } }
  return { wrench: chosen.id, ...adapter }
}

/** The torque that was recorded before, else what the wrench gives. */
function recorded(
  line: BoltLine,
  otherwise: Readonly<Record<string, unknown>>,
): Readonly<Record<string, unknown>> {
  const told = line.record.stages.findLast(({ torque }) => torque)
  return told?.torque ? { torque: told.torque.text } : otherwise.torque ? { torque: otherwise.torque } : {}
}
