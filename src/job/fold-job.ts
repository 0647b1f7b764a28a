import { answerConflicts } from './answer-conflicts.ts'
import { apartConflicts } from './apart-conflicts.ts'
import { clearable } from './cleared-by.ts'
import { decisionsOf } from './decisions-of.ts'
import { effectiveData } from './effective-data.ts'
import { entryData } from './entries-schema.ts'
import type { Entry } from './entry.ts'
import { type Gathered, gathered, isGathered } from './gathered.ts'
import { heightTroubles } from './height-troubles.ts'
import type { AsFoundFact, JobState, MoveFact, ReadingFact, Round, Trouble } from './job-state.ts'
import { missingBefore } from './missing-before.ts'
import { numbered } from './numbered.ts'
import { heightObservation, observationOf, playObservation } from './observation-of.ts'
import { precedence } from './precedence.ts'
import { readEntry, readSealed } from './read-entry.ts'
import { references } from './references.ts'
import { isSealed } from './sealed-entry.ts'
import { type SettingBook, settingBook, withAsFound, withMove } from './setting-book.ts'
import { takenBack } from './taken-back.ts'
import type { Told } from './told.ts'
import { typingsOf } from './typings-of.ts'
import { valueConflicts } from './value-conflicts.ts'
import type { Vocabulary } from './vocabulary-schema.ts'

type Loose<T> = { -readonly [K in keyof T]: T[K] extends readonly (infer U)[] ? U[] : T[K] }

/**
 * A job as it stands, out of its log and nothing else. Pure: the same entries give the same state. The order
 * is the log's own, never the clock's; corrections are laid over what they correct; what conflicts or cannot
 * be read is listed in `troubles` instead of being decided in silence.
 *
 * @param log in causal order
 * @param vocabulary the kinds of entries that are known; `stateByRules` gives that of an older version
 * @source own derivation: docs/methods/formats.md
 * @example foldJob([]).rounds.length // 0
 */
export function foldJob(log: readonly Entry[], vocabulary: Vocabulary = entryData): JobState {
  const entries = numbered(log)
  const state: Loose<Omit<JobState, 'settings'>> = {
    opened: null,
    arrival: null,
    pressures: null,
    bay: null,
    heights: [],
    play: [],
    asFound: [],
    moves: [],
    renewed: [],
    rounds: [],
    ...nothingGathered(),
    corrections: [],
    setAside: [],
    newer: [],
    troubles: [],
  }
  let book: SettingBook = new Map()
  let round: OpenRound | null = null
  const close = () => {
    if (round) state.rounds.push(round)
  }

  const precedes = precedence(entries)
  const undone = takenBack(entries, precedes)
  const effective = effectiveData(entries, undone.by)
  const decided = decisionsOf(entries, effective, (entry) => undone.by.has(entry))
  const asideBy = (entry: number) => undone.by.get(entry) ?? decided.setAside.get(entry)
  state.troubles.push(...undone.troubles, ...decided.troubles)
  for (const [entry, { data: raw, correctedBy }] of effective.entries()) {
    const written = entries[entry]!
    const { kind, at } = written
    const path = ['entries', entry, 'data']
    const by = asideBy(entry)
    if (by !== undefined) {
      state.setAside.push({ entry, by })
      continue
    }
    const read = isSealed(written)
      ? readSealed(written, raw, path, vocabulary)
      : readEntry(kind, raw, path, vocabulary)
    if (read.kind === 'newer' || (read.kind !== 'faulty' && read.beyond)) state.newer.push({ entry, kind })
    if (read.kind === 'newer') continue
    if (read.kind === 'faulty') {
      state.troubles.push(
        ...read.problems.map(({ field, wrong, right }) =>
          faulty(entry, correctedBy, { field, wrong, right }),
        ),
      )
      continue
    }
    const told: Told = {
      entry,
      at: at ?? null,
      round: round?.number ?? 0,
      typings: typingsOf(read.data, entry),
      correctedBy,
    }
    if (isGathered(read.kind)) {
      const amiss = read.kind === 'decision' ? undefined : misnamed(entries, entry, read.kind, read.data)
      if (amiss) state.troubles.push(amiss)
      else (state[gathered[read.kind]] as unknown[]).push({ ...told, ...read.data })
      continue
    }
    switch (read.kind) {
      case 'opened':
      case 'arrival':
        if (state[read.kind]) state.troubles.push(twice(read.kind, entry, state[read.kind]!.entry))
        else Object.assign(state, { [read.kind]: { ...told, ...read.data } })
        break
      case 'set pressures':
        state.pressures = { ...told, ...read.data }
        break
      case 'floor':
        state.bay = { ...told, ...read.data }
        break
      case 'ride height':
        state.heights.push({
          ...told,
          wheel: read.data.wheel,
          when: read.data.when,
          observation: heightObservation(entry, read.data),
        })
        break
      case 'play':
        state.play.push({
          ...told,
          joint: read.data.joint,
          wheel: read.data.wheel,
          direction: read.data.direction ?? null,
          observation: playObservation(entry, read.data),
        })
        break
      case 'as found': {
        const fact: AsFoundFact = { ...told, ...read.data }
        const next = withAsFound(book, fact, state.asFound)
        book = next.book
        state.troubles.push(...next.troubles)
        state.asFound.push(fact)
        break
      }
      case 'round': {
        if (round && read.data.number <= round.number)
          state.troubles.push(notLater(entry, read.data.number, round.number))
        close()
        round = { ...read.data, entry, readings: [], moves: [], settings: [] }
        break
      }
      case 'reading': {
        round ??= {
          number: 0,
          purpose: 'as found',
          settled: false,
          entry: null,
          readings: [],
          moves: [],
          settings: [],
        }
        if (round.stale !== undefined) state.troubles.push(afterChange(entry, round.stale))
        const fact: ReadingFact = { ...told, observation: observationOf(entry, read.data) }
        round.readings.push(fact)
        break
      }
      case 'moved': {
        const fact: MoveFact = { ...told, ...read.data }
        const next = withMove(book, fact)
        book = next.book
        state.troubles.push(...next.troubles)
        state.moves.push(fact)
        if (round) {
          round.moves.push(fact)
          if (round.readings.length > 0) round.stale ??= entry
        }
        break
      }
      case 'part renewed':
        state.renewed.push({ ...told, ...read.data })
        if (round && round.readings.length > 0) round.stale ??= entry
        break
      case 'correction': {
        const { of } = read.data
        if (typeof of === 'number' && of < entry) state.corrections.push({ entry, of })
        else state.troubles.push(noSuchEntry(entry, of))
      }
    }
  }
  close()
  state.troubles.push(
    ...heightTroubles(state.heights),
    ...valueConflicts(state.tightenings, ({ wheel, joint }) => [
      ...state.undone.filter((u) => u.wheel === wheel && u.joint === joint).map((u) => u.entry),
      // Which joint carries an adjuster stands in the corner model; the bolt book looks closer.
      ...state.moves.filter((m) => m.wheel === wheel).map((m) => m.entry),
    ]),
    ...answerConflicts(state),
    ...missingBefore(entries),
    ...apartConflicts(entries, effective, precedes, (entry) => asideBy(entry) !== undefined),
  )
  // A mark found later tells how the adjuster stood in every round before its first move.
  const settingsBefore = (entry: number) => [
    ...settingBook(
      state.asFound,
      state.moves.filter((move) => move.entry < entry),
    ).values(),
  ]
  return {
    ...state,
    rounds: (state.rounds as OpenRound[]).map(({ stale: _, ...r }) => ({
      ...r,
      settings: settingsBefore(r.readings[0]?.entry ?? entries.length),
    })),
    settings: [...book.values()],
  }
}

type OpenRound = Loose<Round> & {
  /** The entry that changed something after readings were taken. */
  stale?: number
}

const faulty = (
  entry: number,
  correctedBy: readonly number[],
  problem: { field: string; wrong: string; right: string },
): Trouble => ({
  entries: [entry, ...correctedBy],
  sentence: `${problem.field}: ${problem.wrong}`,
  remedy: `Right would be: ${problem.right}.`,
})

const nothingGathered = () =>
  Object.fromEntries(Object.values(gathered).map((list) => [list, [] as never[]])) as unknown as {
    [K in keyof Gathered]: Gathered[K][number][]
  }

/** An entry that names another which does not stand before it, or clears what cannot be cleared. */
function misnamed(
  entries: readonly Entry[],
  entry: number,
  kind: string,
  data: Readonly<Record<string, unknown>>,
): Trouble | undefined {
  const [wrong] = references(kind, data).filter(({ of }) => typeof of !== 'number' || of >= entry)
  if (wrong) return noSuchEntry(entry, String(wrong.of))
  if (kind !== 'cleared' || clearable.includes(entries[data.of as number]!.kind)) return undefined
  return {
    entries: [data.of as number, entry],
    sentence: `Entry ${String(data.of)} is nothing that can be cleared.`,
    remedy: 'Name a deviation, a follow-up or a "not road-ready"; correct anything else.',
  }
}

const twice = (kind: 'opened' | 'arrival', entry: number, first: number): Trouble => ({
  entries: [first, entry],
  ...(kind === 'arrival' ? { choice: [first, entry] } : {}),
  sentence: kind === 'opened' ? 'The job was opened twice.' : 'The arrival was written down twice.',
  remedy:
    kind === 'opened'
      ? 'Correct the first entry instead of opening the job again.'
      : 'Decide which of the two holds, or correct the first.',
})

const notLater = (entry: number, number: number, last: number): Trouble => ({
  entries: [entry],
  sentence: `Round ${number} follows round ${last}.`,
  remedy: 'Give a round a higher number than the one before it.',
})

const afterChange = (entry: number, change: number): Trouble => ({
  entries: [change, entry],
  sentence: 'Something was moved or renewed between two readings of one round.',
  remedy: 'Open a new round and read everything again that the change may have touched.',
})

const noSuchEntry = (entry: number, of: number | string): Trouble => ({
  entries: [entry],
  sentence: `The correction names entry ${of}, which does not stand before it.`,
  remedy: 'Name an earlier entry by its number, counted from 0.',
})
