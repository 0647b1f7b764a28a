import { boltBook, clearedBy, foldJob, type JobState, jobAgainst } from '../job/index.ts'
import { thresholdFor } from '../kit/index.ts'
import type { ReadingName } from '../linkage/index.ts'
import { metricUnits, Refusal } from '../quantity/index.ts'
import { limitsOf } from '../spec/index.ts'
import type { ProofSheet } from './proof-sheet.ts'
import { proofBolts } from './proof-sheet-bolts.ts'
import { proofHands } from './proof-sheet-hands.ts'
import { proofLines } from './proof-sheet-lines.ts'
import { proofOpen, proofSentence } from './proof-sheet-open.ts'
import { proofAngles, proofHeights, proofLeans } from './proof-sheet-pairs.ts'
import { proofRound, proofRounds } from './proof-sheet-rounds.ts'
import { readingWords } from './reading-words.ts'
import type { SheetOptions, SheetSources } from './sources.ts'
import { sheetWear } from './wear-of-sheet.ts'

/** How a proof sheet is made. @source definition */
export interface ProofSheetOptions extends Pick<SheetOptions, 'threshold' | 'units'> {
  /** "erased": a copy without personal data; what stood there is said to be erased. Default "shown". */
  readonly personal?: 'shown' | 'erased'
}

/**
 * The job as it is handed over, as one plain value: before and after on one scale, every joint that was worked on, what
 * was found, renewed, declined and put right, by whom and when, and all that is open still. Pure.
 *
 * @source own derivation: docs/methods/record.md
 */
export function proofSheetFrom(sources: SheetSources, options: ProofSheetOptions = {}): ProofSheet {
  const { units = metricUnits, personal = 'shown' } = options
  const { job, corners, spec, kit } = sources
  const threshold = options.threshold ?? thresholdFor(sources)?.value ?? 0.95
  const state = foldJob(job.entries)
  const rounds = proofRounds(state)
  const refused: string[] = []
  const tell = <T>(work: () => T, otherwise: T): T => {
    try {
      return work()
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      refused.push(`${error.sentence} ${error.remedy}`)
      return otherwise
    }
  }
  const task = { sources, state, rounds, threshold, units, tell }
  const heights = proofHeights(task)
  const leans = proofLeans(task)
  const angles = proofAngles(task)
  const wear = sheetWear(sources, state, { units, threshold })
  const beside = { front: corners.front, rear: corners.rear ?? undefined, kit: kit ?? undefined }
  const book = boltBook({ state, corners, spec, kit })
  const limits = Object.keys(spec ? limitsOf(spec) : {}) as ReadingName[]
  const parts = {
    after: proofRound(rounds.after, state),
    angles: angles.rows,
    heights,
    wear: wear.rows.map((row) => ({
      what: `Play of ${row.name}, ${row.wheel}`,
      words: `${row.play.text} ${row.play.spread}. ${row.sentence}`,
      open: row.since === null && row.verdict !== 'inside' && row.verdict !== 'no limit',
    })),
    bolts: proofBolts(book, kit, units),
    ...proofLines(sources, state),
    notRoadReady: state.notRoadReady.flatMap(({ entry, reason, made, hand, at }) =>
      clearedBy(state, entry) === null
        ? [[reason, made && `made ${made}`, hand, at?.slice(0, 10)].filter(Boolean).join(', ')]
        : [],
    ),
    troubles: [
      ...new Set([
        ...state.troubles.map(({ sentence, remedy }) => `${sentence} ${remedy}`),
        ...jobAgainst(job, beside).map(
          ({ field, wrong, right }) => `${field}: ${wrong} Right would be ${right}.`,
        ),
        ...refused,
        ...angles.troubles,
        ...wear.troubles,
      ]),
    ],
    unread: limits.flatMap((name) => {
      if (angles.rows.some((row) => row.name === name)) return []
      const { label, of } = readingWords(name)
      return [`${label}, ${of}`]
    }),
    missing: [...missingFrom(sources, state), ...leans],
  }
  const open = proofOpen(parts, state)
  const { unread: _unread, missing: _missing, ...shown } = parts
  return {
    title: titleOf(sources, state, personal),
    finished: open.length === 0,
    sentence: proofSentence(parts, open),
    open,
    threshold,
    before: proofRound(rounds.before, state),
    ...shown,
    untouched: book.length - parts.bolts.length,
    hands: proofHands(job.entries),
    signOffs: state.signedOff.map(
      ({ hand, at, remark }) =>
        `Signed off by ${hand}${at ? `, ${at.slice(0, 16).replace('T', ' ')}` : ''}${remark ? `: ${remark}` : ''}`,
    ),
    sources: [
      ...(spec ? [`Limits and values: ${spec.source}`] : []),
      ...[corners.front, corners.rear].flatMap((corner) =>
        corner ? [`Corner model, ${corner.axle}: ${corner.source}`] : [],
      ),
      ...(corners.rear ? [] : ['Rear axle: no corner model, so its joints do not stand here']),
      ...(kit ? [`Kit: ${kit.source}`] : []),
    ],
    cautions: cautionsFor(shown.followUps.length > 0, spec?.source ?? null),
  }
}

/** What cannot be looked at, so that nobody takes its absence for its being well. */
function missingFrom({ spec, kit }: SheetSources, state: JobState): readonly string[] {
  return [
    ...(state.opened ? [] : ['The log does not say which vehicle it is.']),
    ...(spec === null ? ['No spec sheet: nothing has a limit or a value.'] : []),
    ...(kit === null ? ['No kit: no wrench and no gauge could be looked up.'] : []),
  ]
}

function titleOf(
  { job }: SheetSources,
  { opened, arrival }: JobState,
  personal: 'shown' | 'erased',
): ProofSheet['title'] {
  const days = job.entries.flatMap(({ at }) => (at ? [at.slice(0, 10)] : []))
  const [first, last] = [days[0], days.at(-1)]
  const consent = arrival?.consent
  return {
    vehicle: opened?.vehicle ?? 'Vehicle not named',
    job: job.job,
    workshop: job.workshop,
    complaint: opened?.complaint ?? 'not recorded',
    asked: arrival
      ? [
          arrival.asked,
          consent &&
            `agreed: ${consent.to}${consent.limit ? `, up to ${consent.limit}` : ''} (${consent.by}, ${consent.how})`,
        ]
          .filter(Boolean)
          .join('; ')
      : null,
    mileage: arrival?.mileage?.text ?? opened?.mileage ?? null,
    vin: arrival?.vin === undefined ? null : personal === 'erased' ? 'erased' : arrival.vin,
    days: first === undefined ? null : first === last ? first : `${first} to ${last}`,
    invented: opened?.invented ?? false,
  }
}

const cautionsFor = (followUps: boolean, source: string | null): readonly string[] => [
  followUps
    ? 'Follow-ups are part of the work: a wheel’s nuts are pulled again after the first distance, heights and angles are read again once new springs have settled.'
    : 'Wheel nuts that were loosened are pulled again after the first distance, heights and angles read again once new springs have settled.',
  'A new knock, pull or play: stop, and have it looked at before driving on.',
  `Values are those that the workshop typed from its own service information${source ? ` (${source})` : ''}; that information and local inspection law stand above this sheet.`,
]
