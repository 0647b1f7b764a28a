import type { Adjuster } from '../adjust/index.ts'
import type { AxleEnd } from '../linkage/index.ts'
import type { Setting } from './job-state.ts'
import { type Stand, standOf } from './stand-of.ts'
import type { WheelName } from './wheel-name.ts'

/**
 * Where the adjusters that an axle has once stand, by the log. An entry may name them under either wheel of the axle:
 * what was found and what was moved are taken together; where the two cannot be told from each other it is not known.
 *
 * @param settings of `JobState` or of one round
 * @param adjusters of the axle, not of its wheels
 * @source own derivation: docs/methods/bolt-book.md
 */
export function standOfAxle({
  settings,
  adjusters,
  axle,
}: {
  readonly settings: readonly Setting[]
  readonly adjusters: readonly Adjuster[]
  readonly axle: AxleEnd
}): readonly Stand[] {
  const wheel: WheelName = `${axle} left`
  return adjusters.map((adjuster): Stand => {
    const [one, other] = settings.filter((s) => s.axle === axle && s.adjuster === adjuster.id)
    const merged = one && other ? together(one, other) : (one ?? null)
    if (merged === 'two things')
      return {
        adjuster,
        setting: null,
        unknown: 'The log names it under both wheels of the axle and says two things.',
      }
    const own = merged ? [{ ...merged, wheel, side: 'left' as const }] : []
    return standOf({ settings: own, adjusters: [adjuster], wheel })[0]!
  })
}

/** Moves add up in whatever order they were made; a move "to" a place under one name and any under the other do not. */
function together(one: Setting, other: Setting): Setting | 'two things' {
  const put = ({ movedTo, movedToClock }: Setting) => movedTo !== null || movedToClock != null
  const moved = (setting: Setting) => put(setting) || setting.movedBy !== 0
  if (moved(one) && moved(other) && (put(one) || put(other))) return 'two things'
  if (one.asFound && other.asFound && one.asFound.value !== other.asFound.value) return 'two things'
  if (one.unit && other.unit && one.unit !== other.unit) return 'two things'
  return {
    ...one,
    asFound: one.asFound ?? other.asFound,
    movedTo: one.movedTo ?? other.movedTo,
    movedToClock: one.movedToClock ?? other.movedToClock ?? null,
    movedBy: one.movedBy + other.movedBy,
    unit: one.unit ?? other.unit,
    fitted: one.fitted ?? other.fitted,
  }
}
