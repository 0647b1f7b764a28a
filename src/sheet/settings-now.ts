import { type Adjuster, settingFromClock, settingUnit } from '../adjust/index.ts'
import type { Setting } from '../job/index.ts'
import type { Side } from '../linkage/index.ts'

/**
 * Where each adjuster of one wheel stands, in its own unit; null where the log does not say. A clock position
 * is turned into a setting by the adjuster's own mark.
 *
 * @throws {Refusal} `setting-out-of-range` when a mark cannot stand where it was seen
 * @source definition
 */
export function settingsNow(
  adjusters: readonly Adjuster[],
  settings: readonly Setting[],
  { end, side }: { end: string; side: Side },
): Readonly<Record<string, number | null>> {
  return Object.fromEntries(
    adjusters.map((adjuster) => {
      const said = settings.find((s) => s.adjuster === adjuster.id && s.axle === end && s.side === side)
      return [adjuster.id, said ? presentSetting(adjuster, said, side) : null]
    }),
  )
}

function presentSetting(adjuster: Adjuster, said: Setting, side: Side): number | null {
  if (said.unit !== null && said.unit !== settingUnit(adjuster)) return null
  if (said.movedTo !== null) return said.movedTo + said.movedBy
  if (said.asFound === null) return null
  if (said.asFound.unit !== 'clock') return said.asFound.value + said.movedBy
  return adjuster.kind === 'eccentric'
    ? settingFromClock(adjuster, side, said.asFound.value) + said.movedBy
    : null
}

/** The adjusters as they are fitted on this wheel: a washer found turned round works the other way. @source definition */
export function asFitted(
  adjusters: readonly Adjuster[],
  settings: readonly Setting[],
  { end, side }: { end: string; side: Side },
): readonly Adjuster[] {
  return adjusters.map((adjuster) => {
    const fitted = settings.find(
      (s) => s.adjuster === adjuster.id && s.axle === end && s.side === side,
    )?.fitted
    return adjuster.kind === 'eccentric' && fitted ? { ...adjuster, fitted } : adjuster
  })
}
