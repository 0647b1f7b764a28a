import { boltBook, foldJob, type Told } from '../job/index.ts'
import { metricUnits, usUnits } from '../quantity/index.ts'
import { arrivalNoted } from './arrival-sheet-noted.ts'
import type { HandoverOptions, HandoverSheet } from './handover-sheet.ts'
import { handoverConflicts } from './handover-sheet-conflicts.ts'
import { handoverHolds, handoverQuestions } from './handover-sheet-drive.ts'
import { handoverElectronics } from './handover-sheet-electronics.ts'
import { handoverFacts } from './handover-sheet-facts.ts'
import { handoverProposals } from './handover-sheet-follow-ups.ts'
import { handoverNext } from './handover-sheet-next.ts'
import { handoverSigning } from './handover-sheet-signing.ts'
import { handoverTouched } from './handover-sheet-touched.ts'
import { proofSheetFrom } from './proof-sheet-from.ts'
import type { SheetSources } from './sources.ts'

/**
 * The job as it is given back: what holds it from its first drive, what counts from the angles, what was declined and
 * agreed, what is open, what a signature covers, and the one next thing. Pure.
 *
 * @source own derivation: docs/methods/arrival-and-handover.md
 */
export function handoverSheetFrom(sources: SheetSources, options: HandoverOptions = {}): HandoverSheet {
  const { units = metricUnits, today } = options
  const { job, corners, spec, kit } = sources
  const { entries } = job
  const state = foldJob(entries)
  const proof = proofSheetFrom(sources, { units })
  const book = boltBook({ state, corners, spec, kit })
  const touched = handoverTouched(sources, state)
  const noted = (fact: Told) => arrivalNoted(fact, entries, options)
  const wordsAt = (entry: number) =>
    noted({ entry, at: null, round: 0, typings: [], correctedBy: [] }).words.replace(/^noted ?/, '')
  const tests = state.roadTests.filter(({ when }) => when === 'after the work')
  const test = tests.at(-1)
  const doubts = answeredNo(tests)
  const sheet = {
    vehicle: proof.title.vehicle,
    job: job.job,
    workshop: job.workshop,
    finished: proof.finished,
    sentence: proof.sentence,
    open: proof.open,
    doubts,
    conflicts: handoverConflicts(state, entries, noted),
    holds: handoverHolds(state, book, touched, proof),
    firstTest: state.arrival?.firstTest
      ? [state.arrival.firstTest, state.arrival.why].filter(Boolean).join(': ')
      : null,
    ...handoverQuestions(state),
    roadTest: test ? { words: noted(test).words, driven: test.driven } : null,
    electronics: handoverElectronics(state, touched, noted),
    ...handoverFacts(state, noted),
    proposals: handoverProposals(state, book, touched, {
      today,
      units: units.distance === usUnits.distance ? 'US' : 'metric',
    }),
    parts: proof.parts,
    days: proof.title.days,
    hands: proof.hands,
    ...handoverSigning(sources, state, { ...proof, doubts }, wordsAt),
    cautions: proof.cautions,
    troubles: proof.troubles,
  }
  return { ...sheet, next: handoverNext(sheet) }
}

/** Road-test answers that say something is not well, unless a later test says it is. */
function answeredNo(tests: ReturnType<typeof foldJob>['roadTests']): readonly string[] {
  const last = new Map(tests.flatMap(({ answers = [] }) => answers).map((one) => [one.question, one]))
  return [...last.values()].flatMap(({ question, answer, remark }) =>
    answer === 'yes' ? [] : [`${question} ${answer}${remark ? `, ${remark}` : ''}.`],
  )
}
