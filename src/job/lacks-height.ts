import type { JobState } from './job-state.ts'
import type { JointRecord } from './joint-record.ts'
import type { WheelName } from './wheel-name.ts'

/**
 * The wheels of a joint whose settled ride height is not on record since the joint was opened or a part there was
 * renewed: a height from before that is another vehicle's.
 *
 * @param record of the joint; parts renewed after its final take nothing away
 * @returns empty when it may be judged at ride height
 * @source own derivation: docs/methods/bolt-book.md
 */
export function lacksHeight({
  state,
  wheels,
  record,
}: {
  readonly state: JobState
  readonly wheels: readonly WheelName[]
  readonly record: JointRecord
}): readonly WheelName[] {
  const until = record.final?.entry ?? Number.POSITIVE_INFINITY
  return wheels.filter((wheel) => {
    const renewed = state.renewed.filter((part) => part.wheels.includes(wheel) && part.entry < until)
    const since = Math.max(record.undone?.entry ?? -1, ...renewed.map(({ entry }) => entry))
    return !state.heights.some(
      (fact) => fact.wheel === wheel && fact.when === 'settled' && fact.entry > since,
    )
  })
}
