import type { JobState, MoveFact } from './job-state.ts'
import type { Told } from './told.ts'
import { valueConflicts } from './value-conflicts.ts'
import type { WheelName } from './wheel-name.ts'

/** One tightening as the log tells it. @source definition */
export type TightenedFact = JobState['tightenings'][number]

/** What the log says of one joint since it was last opened. @source definition */
export interface JointRecord {
  /** The last time it was undone; null when it never was since. */
  readonly undone: JobState['undone'][number] | null
  /** The move of its own adjuster that came last since. */
  readonly moved: MoveFact | null
  readonly started: TightenedFact | null
  readonly runUp: TightenedFact | null
  readonly stages: readonly TightenedFact[]
  /** The last one; earlier ones of the same value are no more than that. */
  readonly final: TightenedFact | null
  readonly pin: JobState['pins'][number] | null
  readonly checks: readonly JobState['secondChecks'][number][]
  /** Entries with two values; null where there is no conflict. */
  readonly twoValues: readonly number[] | null
  /** A final, or a second check, that later entries took away again. */
  readonly fell: { readonly was: 'final' | 'checked'; readonly entry: number; readonly by: number } | null
  /** What was said of its fastener since. */
  readonly fastener: 'new' | 'used again' | null
  /** Its single-use fastener has been final once already, and nobody fitted another. */
  readonly usedUp: number | null
}

type Event =
  | { readonly kind: 'undone'; readonly fact: JobState['undone'][number] }
  | { readonly kind: 'moved'; readonly fact: MoveFact }
  | { readonly kind: 'tightened'; readonly fact: TightenedFact }
  | { readonly kind: 'pinned'; readonly fact: JobState['pins'][number] }
  | { readonly kind: 'checked'; readonly fact: JobState['secondChecks'][number] }

const nothing: JointRecord = {
  undone: null,
  moved: null,
  started: null,
  runUp: null,
  stages: [],
  final: null,
  pin: null,
  checks: [],
  twoValues: null,
  fell: null,
  fastener: null,
  usedUp: null,
}

/**
 * What the log says of one joint, from its last opening on: undoing it, moving what it carries after it was final,
 * or starting it anew takes away what was recorded before, and says what fell.
 *
 * @param wheels under whose name the log speaks of it
 * @param moves of the adjuster that its bolt carries
 * @source own derivation: docs/methods/bolt-book.md
 */
export function jointRecord({
  state,
  wheels,
  joint,
  moves,
}: {
  readonly state: JobState
  readonly wheels: readonly WheelName[]
  readonly joint: string
  readonly moves: readonly MoveFact[]
}): JointRecord {
  const here = <F extends { readonly wheel: WheelName; readonly joint: string }>(facts: readonly F[]) =>
    facts.filter((fact) => wheels.includes(fact.wheel) && fact.joint === joint)
  const events: Event[] = [
    ...here(state.undone).map((fact) => ({ kind: 'undone', fact }) as const),
    ...moves.map((fact) => ({ kind: 'moved', fact }) as const),
    ...here(state.tightenings).map((fact) => ({ kind: 'tightened', fact }) as const),
    ...here(state.pins).map((fact) => ({ kind: 'pinned', fact }) as const),
    ...here(state.secondChecks).map((fact) => ({ kind: 'checked', fact }) as const),
  ]
  events.sort((a, b) => a.fact.entry - b.fact.entry)
  const record = events.reduce(after, nothing)
  const openings = [...here(state.undone), ...moves].map(({ entry }) => entry)
  const since = Math.max(...[record.undone, record.moved].map((fact) => fact?.entry ?? -1))
  const conflict = valueConflicts(
    here(state.tightenings).map((fact) => ({ ...fact, wheel: wheels[0]! })),
    () => openings,
  ).find(({ entries }) => entries.some((entry) => entry > since))
  return { ...record, twoValues: conflict ? conflict.entries : null }
}

function after(before: JointRecord, { kind, fact }: Event): JointRecord {
  switch (kind) {
    case 'undone':
      return { ...reopened(before, fact), undone: fact }
    case 'moved':
      return { ...(before.final ? reopened(before, fact) : before), moved: fact }
    case 'tightened':
      return tightened(before, fact)
    case 'pinned':
      return { ...before, pin: fact }
    case 'checked':
      return { ...before, checks: [...before.checks, fact] }
  }
}

function tightened(was: JointRecord, fact: TightenedFact): JointRecord {
  const before = was.final && fact.stage !== 'final' ? reopened(was, fact) : was
  const fitted = {
    fastener: fact.fastener ?? before.fastener,
    // A new fastener takes the place of the one that was used up.
    usedUp: fact.fastener === 'new' ? null : before.usedUp,
  }
  switch (fact.stage) {
    case 'final':
      return { ...before, ...fitted, final: fact, ...fell(before, fact, 'checked') }
    case 'stage':
      return { ...before, ...fitted, stages: [...before.stages, fact] }
    case 'run up':
      return { ...before, ...fitted, runUp: fact }
    case 'started':
      return { ...before, ...fitted, started: fact }
  }
}

/** Nothing of what was recorded before counts any more. */
function reopened(before: JointRecord, by: Told): JointRecord {
  const was = before.checks.some(({ passed }) => passed) ? 'checked' : 'final'
  return {
    ...nothing,
    ...fell(before, by, was),
    usedUp: before.final ? before.final.entry : before.usedUp,
  }
}

function fell(before: JointRecord, by: Told, was: 'final' | 'checked'): Pick<JointRecord, 'fell'> {
  const check = before.checks.filter(({ passed }) => passed).at(-1)
  const lost = was === 'checked' ? check : before.final
  return { fell: lost ? { was, entry: lost.entry, by: by.entry } : before.fell }
}
