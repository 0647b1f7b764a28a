import { type Adjuster, isFaced, settingFromClock } from '../adjust/index.ts'
import type { Problem } from '../corner/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { JobState, MoveFact } from './job-state.ts'
import { settingBook } from './setting-book.ts'
import { standOf } from './stand-of.ts'
import { type WheelName, wheelPlace } from './wheel-name.ts'

/** A mark is read to a quarter of an hour of its face, rad: half of that either way. */
const BY_EYE = Math.PI / 48

/**
 * Moves whose start is not where the log has the adjuster, one of the two given as a clock position: only with the corner
 * model can they be held against each other.
 *
 * @source own derivation: docs/methods/formats.md
 */
export function fromAgainst(state: JobState, wheel: WheelName, drawn: Adjuster): readonly Problem[] {
  const marks = state.asFound.filter((f) => f.wheel === wheel && f.adjuster === drawn.id)
  const moves = state.moves.filter((f) => f.wheel === wheel && f.adjuster === drawn.id)
  return moves.flatMap((move, i): Problem[] => {
    if (!isFaced(drawn)) {
      const clock = move.fromClock ?? move.toClock
      return clock
        ? [
            {
              field: `entries[${move.entry}].data`,
              wrong: `“${clock.text}” is a clock position, and “${drawn.name}” has no face.`,
              right: 'its setting, under "from", "to" or "by"',
            },
          ]
        : []
    }
    const settings = [...settingBook(marks, moves.slice(0, i)).values()]
    const known = settings.some(({ asFound, movedTo, movedToClock }) => asFound ?? movedTo ?? movedToClock)
    const [stand] = standOf({ settings, adjusters: [drawn], wheel })
    const said = startOf(move, drawn, wheel)
    if (!known || said === null || stand?.setting == null) return []
    const room = Math.max(BY_EYE, drawn.step / 2)
    if (Math.abs(said.setting - stand.setting) <= room * (1 + 1e-9)) return []
    return [
      {
        field: `entries[${move.entry}].data.${said.member}`,
        wrong: `The move of the ${drawn.name} of the ${wheel} wheel starts at “${said.text}”, but the log has it elsewhere.`,
        right: 'what the mark shows now; or correct the entry before it',
      },
    ]
  })
}

/** Where a move says that it starts, as a setting; null where it says nothing, or what no mark can show. */
function startOf(
  { from, fromClock }: MoveFact,
  drawn: Adjuster,
  wheel: WheelName,
): { readonly setting: number; readonly text: string; readonly member: 'from' | 'fromClock' } | null {
  if (from) return from.unit === 'rad' ? { setting: from.value, text: from.text, member: 'from' } : null
  if (!fromClock || !isFaced(drawn)) return null
  try {
    const setting = settingFromClock(drawn, wheelPlace(wheel).side, fromClock.value)
    return { setting, text: fromClock.text, member: 'fromClock' }
  } catch (refusal) {
    if (refusal instanceof Refusal) return null
    throw refusal
  }
}
