import type { AsFoundFact, MoveFact, Setting, Trouble } from './job-state.ts'
import { type WheelName, wheelPlace } from './wheel-name.ts'

/** Where every adjuster stands, as far as the log has said by now. */
export type SettingBook = ReadonlyMap<string, Setting>

/** A unit as a person says it. */
const spoken = { rad: 'degrees', m: 'a length', turn: 'turns' } as const

/** Two texts of one setting may differ by rounding of a conversion, not by more. */
const SAME = 1e-9

const keyOf = (wheel: WheelName, adjuster: string) => `${wheel}, ${adjuster}`

/**
 * The book after an as-found mark. A second mark that says something else makes the setting unknown until
 * a correction decides.
 *
 * @source own derivation: docs/methods/formats.md
 */
export function withAsFound(
  book: SettingBook,
  fact: AsFoundFact,
  earlier: readonly AsFoundFact[],
): { readonly book: SettingBook; readonly troubles: readonly Trouble[] } {
  const key = keyOf(fact.wheel, fact.adjuster)
  const before = book.get(key)
  const found = fact.setting ?? (fact.clock ? { ...fact.clock, unit: 'clock' as const } : null)
  const troubles: Trouble[] = []
  const rivals = earlier.filter(
    (e) => e.adjuster === fact.adjuster && e.wheel === fact.wheel && differs(e, fact),
  )
  if (rivals.length > 0)
    troubles.push({
      entries: [...rivals.map((e) => e.entry), fact.entry],
      choice: [...rivals.map((e) => e.entry), fact.entry],
      sentence: `The ${fact.adjuster} of the ${fact.wheel} wheel was found at two places: ${[...rivals, fact].map((e) => `“${saidOf(e)}”`).join(' and ')}.`,
      remedy: 'Decide which is right and correct the other entry; until then its setting is not known.',
    })
  if (before && wasMoved(before))
    troubles.push({
      entries: [fact.entry],
      sentence: `The ${fact.adjuster} of the ${fact.wheel} wheel had been moved before this as-found mark.`,
      remedy: 'Write the mark down as a note, or correct the move.',
    })
  const setting: Setting = {
    ...start(fact.wheel, fact.adjuster),
    ...before,
    asFound: rivals.length > 0 ? null : (found ?? before?.asFound ?? null),
    unit: before?.unit ?? (found === null ? null : found.unit === 'clock' ? 'rad' : found.unit),
    fitted: fact.fitted ?? before?.fitted ?? null,
  }
  return { book: new Map(book).set(key, setting), troubles }
}

/**
 * The book after a move.
 *
 * @source own derivation: docs/methods/formats.md
 */
export function withMove(
  book: SettingBook,
  fact: MoveFact,
): { readonly book: SettingBook; readonly troubles: readonly Trouble[] } {
  const key = keyOf(fact.wheel, fact.adjuster)
  const before = book.get(key) ?? start(fact.wheel, fact.adjuster)
  const said = fact.to ?? fact.by ?? { ...fact.toClock!, unit: 'rad' as const }
  const troubles: Trouble[] = []
  const units = new Set([before.unit, fact.from?.unit, said.unit].filter((unit) => unit))
  if (units.size > 1)
    troubles.push({
      entries: [fact.entry],
      sentence: `The ${fact.adjuster} of the ${fact.wheel} wheel is given in ${[...units].map((unit) => spoken[unit!]).join(' and in ')}.`,
      remedy: 'Give all its settings in the unit of the adjuster.',
    })
  // Where nothing was marked, the start of the first move is what was found.
  const untouched = before.asFound === null && !wasMoved(before)
  const begins = fact.from ?? (fact.fromClock ? { ...fact.fromClock, unit: 'clock' as const } : null)
  const asFound = untouched && begins ? begins : before.asFound
  const now = nowOf({ ...before, asFound })
  if (fact.from && now !== null && Math.abs(now - fact.from.value) > SAME)
    troubles.push({
      entries: [fact.entry],
      sentence: `The move of the ${fact.adjuster} of the ${fact.wheel} wheel starts at “${fact.from.text}”, but the log has it elsewhere.`,
      remedy: 'Look at the mark and correct this entry or the one before it.',
    })
  const setting: Setting = {
    ...before,
    asFound,
    unit: before.unit ?? said.unit,
    movedTo: fact.to
      ? fact.to.value
      : fact.toClock
        ? null
        : fact.from && before.movedTo === null && (before.movedToClock ?? null) === null && now === null
          ? fact.from.value
          : before.movedTo,
    ...(fact.toClock || before.movedToClock !== undefined
      ? { movedToClock: fact.toClock ? fact.toClock.value : fact.to ? null : before.movedToClock! }
      : {}),
    movedBy: fact.by ? before.movedBy + fact.by.value : 0,
  }
  return { book: new Map(book).set(key, setting), troubles }
}

/**
 * The book after these marks and moves, without the troubles.
 *
 * @source own derivation: docs/methods/formats.md
 */
export function settingBook(marks: readonly AsFoundFact[], moves: readonly MoveFact[]): SettingBook {
  let book: SettingBook = new Map()
  for (const [i, mark] of marks.entries()) book = withAsFound(book, mark, marks.slice(0, i)).book
  for (const move of moves) book = withMove(book, move).book
  return book
}

const start = (wheel: WheelName, adjuster: string): Setting => ({
  adjuster,
  wheel,
  ...wheelPlace(wheel),
  asFound: null,
  movedBy: 0,
  movedTo: null,
  unit: null,
  fitted: null,
})

const wasMoved = ({ movedBy, movedTo, movedToClock }: Setting): boolean =>
  movedBy !== 0 || movedTo !== null || movedToClock != null

/** Where it stands, in its own unit; null when only a clock position or nothing is known. */
function nowOf(setting: Setting): number | null {
  if (setting.movedToClock != null) return null
  const from =
    setting.movedTo ?? (setting.asFound && setting.asFound.unit !== 'clock' ? setting.asFound.value : null)
  return from === null ? null : from + setting.movedBy
}

const saidOf = (fact: AsFoundFact) => (fact.setting ?? fact.clock)?.text ?? 'no setting'

function differs(a: AsFoundFact, b: AsFoundFact): boolean {
  const [x, y] = a.setting && b.setting ? [a.setting, b.setting] : [a.clock, b.clock]
  return x !== undefined && y !== undefined && Math.abs(x.value - y.value) > SAME
}
