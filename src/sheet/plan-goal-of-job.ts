import { type JobState, type WheelName, wheelPlace } from '../job/index.ts'
import type { Assembly, Goal, PartNode } from '../plan/index.ts'

interface Named {
  readonly entry: number
  readonly part: string
  readonly wheels: readonly WheelName[] | null
  readonly wanted: boolean
}

/**
 * What a job's log says is replaced: parts that were renewed, and extra work on a part, as it was answered last; by
 * the assembly's ids.
 *
 * @returns the goal, null where the log names no part; and what could not be found on the vehicle
 * @source own derivation: docs/methods/plan.md
 */
export function goalOfJob(
  assembly: Assembly,
  state: JobState,
): { readonly goal: Goal | null; readonly troubles: readonly string[] } {
  const replace = new Set<string>()
  const troubles: string[] = []
  const all = Object.values(assembly.parts)
  for (const { part, wheels, wanted } of namedIn(state)) {
    const found: readonly (string | null)[] = wheels
      ? wheels.map((wheel) => partAt(all, part, wheel))
      : anywhere(all, part)
    if (found.length === 0 || found.includes(null))
      troubles.push(
        wheels
          ? `The log names “${part}” (${wheels.join(', ')}), and no corner model has it there. Name the part as the corner model does.`
          : `The log names “${part}” without its wheel, and the corner models have none or several of it. Name the wheel.`,
      )
    for (const id of found) if (id !== null) wanted ? replace.add(id) : replace.delete(id)
  }
  return { goal: replace.size > 0 ? { replace: [...replace] } : null, troubles }
}

/** In the order of the log: a later answer stands above an earlier one. */
const namedIn = ({ renewed, extraWork }: JobState): readonly Named[] =>
  [
    ...renewed.map(({ entry, part, wheels }) => ({ entry, part, wheels, wanted: true })),
    ...extraWork.flatMap(({ entry, part, wheels, answer }) =>
      part === undefined || answer === 'asked'
        ? []
        : [{ entry, part, wheels: wheels ?? null, wanted: answer === 'yes' }],
    ),
  ].sort((a, b) => a.entry - b.entry)

function partAt(parts: readonly PartNode[], name: string, wheel: WheelName): string | null {
  const { axle, side } = wheelPlace(wheel)
  return (
    parts.find(
      (part) => part.name === name && part.axle === axle && (part.side === side || part.side === null),
    )?.id ?? null
  )
}

/** Without a wheel a part is known only where the vehicle has one of it. */
function anywhere(parts: readonly PartNode[], name: string): readonly string[] {
  const found = parts.filter((part) => part.name === name)
  return found.length === 1 ? [found[0]!.id] : []
}
