import type { Corner } from '../corner/index.ts'
import { checkJoint, type Joint, type Step, type StepOptions, stepsOf } from '../fasten/index.ts'
import { type BoltLine, type JobState, lacksHeight } from '../job/index.ts'
import { Refusal, type TorqueUnit } from '../quantity/index.ts'
import { tighteningJoint } from '../spec/index.ts'
import type { BoltDoing, DoingAct } from './bolt-sheet.ts'
import { doingActs, lookActs, undoAct } from './doing-acts.ts'
import { doingDrawing } from './doing-drawing.ts'
import { doingFigures } from './doing-figures.ts'
import { doingWords } from './doing-words.ts'
import { jointCautions } from './joint-cautions.ts'
import { actOf, jointStage } from './joint-stage.ts'
import { jointStand } from './joint-stand.ts'
import { atFastener } from './joint-words.ts'
import { nextTorque } from './next-torque.ts'
import type { SheetSources } from './sources.ts'
import { type ChosenWrench, wrenchFor } from './wrench-for.ts'

/** What the doing screen of a joint is made from. */
export interface DoingCase {
  readonly line: BoltLine
  readonly corner: Corner
  readonly state: JobState
  readonly sources: SheetSources
  readonly place: string
  readonly today: string
  /** Unit where no wrench is in the hand. */
  readonly unit: TorqueUnit
}

/**
 * The doing screen of a joint: the fasten room says what comes now, the bolt book what does not count yet, the kit which
 * wrench leaves the torque least unsure.
 *
 * @source own derivation: docs/methods/bolt-book.md
 */
export function doingOfJoint(one: DoingCase): BoltDoing {
  const { line, corner, sources, place } = one
  const shell: BoltDoing = {
    place,
    secondCheck: line.required.secondCheck,
    stand: jointStand(line, corner),
    cautions: jointCautions(line, corner, sources.spec),
    with: '',
    figures: [],
    drawing: null,
    says: [],
    acts: [],
    blocked: [],
  }
  const tightening = sources.spec?.tightening?.[corner.axle]?.[line.joint]
  const joint = tightening ? tighteningJoint(corner, line.joint, tightening) : null
  if (line.state === 'closed' && line.done)
    return { ...shell, says: ['Not opened in this job.'], acts: [undoAct(line)] }
  if (line.done) return { ...shell, says: ['Done.'], acts: [undoAct(line)] }
  const elsewhere = line.toDo
    .filter(({ mend, holdsAt, rule }) => mend === 'elsewhere' && holdsAt !== null && rule !== 'no value')
    .map(({ sentence, remedy }) => `${sentence} ${remedy}`)
  if (line.state === 'final' && line.toDo.every(({ mend, holdsAt }) => mend === 'look' || holdsAt === null))
    return {
      ...shell,
      says: ['Look at it a **second time**: another person, or the same one later.'],
      acts: lookActs(line, joint),
    }
  if (joint === null) return withoutValue(shell, line, elsewhere)
  const faults = faultsOf(joint)
  if (faults !== null) return { ...shell, acts: begin(line), blocked: [...elsewhere, faults] }
  return guided(one, { shell, joint, elsewhere })
}

function guided(
  { line, corner, state, sources: { kit }, today, unit }: DoingCase,
  { shell, joint, elsewhere }: { shell: BoltDoing; joint: Joint; elsewhere: readonly string[] },
): BoltDoing {
  const stage = jointStage(line, joint)
  const act = actOf(line, joint)
  const model = corner.joints[line.joint]!
  const count = model.count ?? (line.kind === 'wheel nuts' ? corner.wheel.studs : null)
  const stated = nextTorque(joint, stage?.made ?? 0)
  const looked =
    kit && stated ? wrenchFor({ kit, joint, stated, rod: line.kind === 'thread and lock nut', today }) : null
  const chosen: ChosenWrench | null = looked && 'ranked' in looked ? looked : null
  const steps = allSteps(joint, { hand: chosen?.ranked ?? null, unit })
  const now = act === 'undo' ? -1 : place(steps, act, stage?.made ?? 0)
  const step = steps[Math.max(now, 0)] ?? null
  const hand = pulled(steps, Math.max(now, 0))
  const pulls = steps.filter((one) => one.act === 'pull' || one.act === 'turn')
  const number = hand ? pulls.indexOf(hand) + 1 : 0
  const blocked = [
    ...elsewhere,
    ...(looked && 'whyNot' in looked
      ? looked.whyNot.map((why) => `No wrench of the kit covers it. ${why}`)
      : []),
    ...heightFirst(line, state),
    ...(line.adjuster !== null && turnedSince(state)
      ? [
          'Adjusters were turned after the last readings. Read again first: it stays run up until the last move.',
        ]
      : []),
  ]
  const acts: readonly DoingAct[] =
    act === 'undo'
      ? [undoAct(line)]
      : now < 0
        ? []
        : doingActs({ line, joint, steps, now, chosen, blocked: blocked.length > 0 })
  return {
    ...shell,
    cautions: [...shell.cautions, ...(chosen?.ranked.warnings ?? [])],
    with: chosen ? handWords(chosen) : '',
    figures: doingFigures({
      joint,
      step: hand,
      stage: pulls.length > 1 && number > 0 ? `Stage ${number} of ${pulls.length}` : '',
      chosen,
      unit,
      at: atFastener(line.kind),
    }),
    drawing: doingDrawing(joint, step, count),
    says:
      act === 'undo'
        ? [
            '**Undo** it with a bar or spanner, never with the torque wrench, and begin anew: what is recorded does not count.',
          ]
        : doingWords(steps, now),
    acts,
    blocked,
  }
}

/** Undoing it stays possible where nothing can be tightened. */
const begin = (line: BoltLine): readonly DoingAct[] => [
  {
    label: 'Run up',
    ready: true,
    entry: { kind: 'tightened', data: { joint: line.joint, wheel: line.wheel, stage: 'run up' } },
  },
]

function withoutValue(shell: BoltDoing, line: BoltLine, elsewhere: readonly string[]): BoltDoing {
  const { joint, wheel, required } = line
  if (required.procedure === 'none')
    return {
      ...shell,
      says: ['Home and **locked**: pull at it.'],
      acts: [
        {
          label: 'Home and locked',
          ready: elsewhere.length === 0,
          entry: { kind: 'tightened', data: { joint, wheel, stage: 'final' } },
        },
      ],
      blocked: elsewhere,
    }
  return {
    ...shell,
    says: ['Run it up by **hand**; run up is not final.'],
    acts: begin(line),
    blocked: [
      ...elsewhere,
      'No value in the spec sheet: type its procedure and value from your own information. None is made up here.',
    ],
  }
}

/** Where the steps reach a torque, or the next one that does: its figures are what the hand sets. */
const pulled = (steps: readonly Step[], now: number): Step | null =>
  steps.slice(now).find(({ figures }) => figures.length > 0) ?? steps[now] ?? null

/** The place of the step that comes now. */
function place(steps: readonly Step[], act: Step['act'] | null, made: number): number {
  const from = steps.findIndex((step) => step.act !== 'fit' && step.act !== 'run up')
  if (act === 'pull' || act === 'turn')
    return steps[from + made]?.act === act ? from + made : steps.findIndex((step) => step.act === act)
  return steps.findIndex((step) => step.act === act)
}

function allSteps(joint: Joint, options: StepOptions): readonly Step[] {
  try {
    return stepsOf(joint, options)
  } catch (refusal) {
    // The wrench in the hand gives the next torque; where it cannot give another, the fastener's value stands.
    if (refusal instanceof Refusal) return stepsOf(joint, { ...options, hand: null })
    throw refusal
  }
}

function faultsOf(joint: Joint): string | null {
  try {
    checkJoint(joint)
    return null
  } catch (refusal) {
    if (refusal instanceof Refusal) return `${refusal.sentence} ${refusal.remedy}`
    throw refusal
  }
}

function heightFirst(line: BoltLine, state: JobState): readonly string[] {
  if (!line.required.positions.includes('at ride height')) return []
  const missing = lacksHeight({ state, wheels: line.wheels, record: line.record })
  return missing.length === 0
    ? []
    : [
        `No settled ride height of the ${missing.join(' and ')} wheel is recorded since it was opened. Run it up, settle the vehicle, measure the height, write it down; then make it final there.`,
      ]
}

const turnedSince = (state: JobState): boolean =>
  (state.rounds.findLast(({ readings }) => readings.length > 0)?.moves.length ?? 0) > 0

const handWords = ({ ranked: { wrench, adapter, off } }: ChosenWrench): string =>
  `${wrench.name}${adapter ? ` with ${adapter.name}, straight ahead` : ''}, within ${Math.max(1, Math.round(off * 100))} % of the value`
