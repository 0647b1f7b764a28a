import type { Corner } from '../corner/index.ts'
import type { JobState } from './job-state.ts'
import type { WheelName } from './wheel-name.ts'

/** Why a joint must have been opened although nobody wrote that down. */
export interface Touched {
  readonly entry: number
  readonly sentence: string
}

/**
 * The joints of a wheel that must have been opened: those of a renewed part, and those of whatever has to come off
 * before an opened joint can be reached.
 *
 * @returns by joint; those that the log names itself are absent unless something else gives them away too
 * @source own derivation: docs/methods/bolt-book.md
 */
export function touchedJoints({
  state,
  corner,
  wheel,
}: {
  readonly state: JobState
  readonly corner: Corner
  readonly wheel: WheelName
}): ReadonlyMap<string, Touched> {
  const found = new Map<string, Touched>()
  const joining = (part: string) =>
    Object.keys(corner.joints).filter((id) => corner.joints[id]!.joins.includes(part))
  const nameOf = (part: string) => corner.parts[part]?.name ?? part.replaceAll('-', ' ')
  for (const { entry, part, wheels } of state.renewed)
    if (wheels.includes(wheel))
      for (const id of joining(part))
        if (!found.has(id)) found.set(id, { entry, sentence: `the ${nameOf(part)} was renewed` })
  const queue: (readonly [string, number])[] = [
    ...[...found].map(([id, { entry }]) => [id, entry] as const),
    ...state.undone.filter((u) => u.wheel === wheel).map(({ joint, entry }) => [joint, entry] as const),
  ]
  const seen = new Set<string>()
  for (let next = queue.shift(); next; next = queue.shift()) {
    const [id, entry] = next
    if (seen.has(id)) continue
    seen.add(id)
    for (const { partOff } of corner.joints[id]?.access ?? []) {
      if (partOff === undefined) continue
      for (const other of joining(partOff)) {
        queue.push([other, entry])
        if (!found.has(other))
          found.set(other, {
            entry,
            sentence: `the ${nameOf(partOff)} must come off to reach the ${corner.joints[id]!.name ?? id.replaceAll('-', ' ')}`,
          })
      }
    }
  }
  return found
}
