import { type Adjuster, isFaced, settingFromClock, settingUnit } from '../adjust/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { Setting } from './job-state.ts'
import { type WheelName, wheelPlace } from './wheel-name.ts'

/** One adjuster of one wheel and where it stands. @source definition */
export interface Stand {
  /** As it was found fitted, where the log says so. */
  readonly adjuster: Adjuster
  /** In the adjuster's own unit; null when the log does not say, or says two things. */
  readonly setting: number | null
  /** Why it is not known; empty when it is. */
  readonly unknown: string
}

/**
 * Where the adjusters of a wheel stand, by the log: a clock position is turned into a setting, a thread that
 * nobody recorded counts from how it was found, anything else unrecorded is not known.
 *
 * @param settings of `JobState` or of one round
 * @param adjusters of the wheel's corner
 * @source own derivation: docs/methods/formats.md
 */
export function standOf({
  settings,
  adjusters,
  wheel,
}: {
  readonly settings: readonly Setting[]
  readonly adjusters: readonly Adjuster[]
  readonly wheel: WheelName
}): readonly Stand[] {
  return adjusters.map((drawn) => {
    const said = settings.find((s) => s.wheel === wheel && s.adjuster === drawn.id)
    const adjuster: Adjuster =
      drawn.kind === 'eccentric' && said?.fitted ? { ...drawn, fitted: said.fitted } : drawn
    if (said?.unit && said.unit !== settingUnit(adjuster))
      return { adjuster, setting: null, unknown: `The log gives it in ${said.unit}.` }
    const start = said?.movedTo ?? startAt(adjuster, said, wheel)
    if (typeof start === 'string') return { adjuster, setting: null, unknown: start }
    return { adjuster, setting: start + (said?.movedBy ?? 0), unknown: '' }
  })
}

function startAt(adjuster: Adjuster, said: Setting | undefined, wheel: WheelName): number | string {
  const clock = said?.movedToClock
  const found =
    clock == null
      ? said?.asFound
      : { text: 'The place it was turned to', value: clock, unit: 'clock' as const }
  if (!found) return adjuster.kind === 'thread' ? 0 : 'Nobody recorded how it was found, or two marks differ.'
  if (found.unit !== 'clock') return found.value
  if (!isFaced(adjuster)) return `“${found.text}” is a clock position, and it has no face.`
  try {
    return settingFromClock(adjuster, wheelPlace(wheel).side, found.value)
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal.sentence
    throw refusal
  }
}
