import type { BoltLine, JobState } from '../job/index.ts'
import type { HandoverHold, HandoverQuestion } from './handover-sheet.ts'
import type { HandoverTouched } from './handover-sheet-touched.ts'
import type { ProofSheet } from './proof-sheet.ts'

/**
 * What holds the vehicle back from its first drive: joints that are not final, pins, a pedal that nobody noted as firm,
 * toe that is not proven. The joints first.
 *
 * @source common practice, no source
 */
export function handoverHolds(
  state: JobState,
  book: readonly BoltLine[],
  touched: HandoverTouched,
  { after, angles }: Pick<ProofSheet, 'after' | 'angles'>,
): readonly HandoverHold[] {
  const joints = book.flatMap((line): readonly HandoverHold[] => {
    const [first] = line.toDo.filter(({ holdsAt }) => holdsAt !== null)
    return line.done
      ? []
      : [{ sentence: first?.sentence ?? `${line.name}, ${line.place}, is ${line.state}.`, stage: 'refit' }]
  })
  const pedal = state.pedals.at(-1)
  const braked = [...touched.lines, ...touched.callipers]
  const brakes: readonly HandoverHold[] =
    pedal && !pedal.firm
      ? [{ sentence: 'The brake pedal is not firm: pump or bleed it.', stage: 'refit' }]
      : !pedal && braked.length > 0
        ? [
            {
              sentence: `${upper(braked.join(', '))} was touched, and nobody noted the brake pedal as firm.`,
              stage: null,
            },
          ]
        : []
  const toe = angles.filter(({ name, after: now }) => name.includes('toe') && now?.verdict !== 'inside')
  const unproven =
    after === null ||
    after.movedSince ||
    after.renewedSince ||
    after.purpose !== 'proving' ||
    toe.some(({ limit }) => limit !== null)
  return [
    ...joints,
    ...brakes,
    ...(touched.geometry.length > 0 && unproven
      ? [
          {
            sentence: `Toe is not proven after ${listed(touched.geometry)}: yard pace only, until it is read inside.`,
            stage: 'angles' as const,
          },
        ]
      : []),
  ]
}

const pedalFirm = 'Brake pedal firm?'
/** Looked at while it stands, before anybody drives it. @source common practice, no source */
const standing: readonly string[] = [
  'Wheel nuts at their torque?',
  'Tyres fit for the road?',
  'Joints that carry the load tight?',
  pedalFirm,
  'Steering free from lock to lock, hoses and leads clear?',
]
/** Felt on the road; yes is well. @source common practice, no source */
const road: readonly string[] = [
  'Does it run straight by itself?',
  'Does the steering wheel stand straight?',
  'Does the steering come back by itself?',
  'Does it brake straight?',
  'Is it quiet over bumps?',
  'Is it free of shaking?',
  'Are all warning lamps out?',
]

/**
 * The road-test list with what was answered last after the work. Every question is put so that yes is well.
 *
 * @source common practice, no source
 */
export function handoverQuestions(state: JobState): {
  readonly standing: readonly HandoverQuestion[]
  readonly road: readonly HandoverQuestion[]
} {
  const answers = state.roadTests
    .filter(({ when }) => when === 'after the work')
    .flatMap((test) => test.answers ?? [])
  const with_ = (question: string): HandoverQuestion => ({
    question,
    answer: answers.findLast((one) => one.question === question)?.answer ?? null,
    tells: question === pedalFirm ? 'pedal' : null,
  })
  const complaint = state.opened?.complaint
  return {
    standing: standing.map(with_),
    road: [...(complaint ? [`Is it gone: “${complaint}”?`] : []), ...road].map(with_),
  }
}

const upper = (words: string) => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`
const listed = (names: readonly string[]) =>
  names.length > 3 ? `${names.slice(0, 3).join(', ')} and ${names.length - 3} more` : names.join(', ')
