import type { JobState, Trouble } from './job-state.ts'
import { SAME_TORQUE, torqueOf } from './torque-of.ts'

type Tightening = JobState['tightenings'][number]

/**
 * Two different values for one joint at one stage, with nothing between that opened it again: two values, decide.
 * Starting or running it up again opens nothing here, since two devices may each have written that down.
 *
 * @param reopened entries at which this joint was undone or what it carries was moved
 * @source own derivation: docs/methods/formats.md
 */
export function valueConflicts(
  tightenings: readonly Tightening[],
  reopened: (fact: Tightening) => readonly number[],
): readonly Trouble[] {
  const groups = new Map<string, Tightening[]>()
  for (const fact of tightenings) {
    const build = reopened(fact).filter((entry) => entry < fact.entry).length
    const stage = fact.stage === 'stage' ? `stage ${fact.number}` : fact.stage
    const key = JSON.stringify([fact.wheel, fact.joint, stage, build])
    groups.set(key, [...(groups.get(key) ?? []), fact])
  }
  return [...groups.values()].flatMap((facts): Trouble[] => {
    const said = facts.filter((fact) => torqueOf(fact) !== null || fact.angle !== undefined)
    if (!said.some((a) => said.some((b) => differ(a, b)))) return []
    const { joint, wheel } = said[0]!
    const entries = said.map(({ entry }) => entry)
    return [
      {
        entries,
        choice: entries,
        sentence: `Two values for the ${joint} of the ${wheel} wheel: ${[...new Set(said.map(textOf))].join(' and ')}.`,
        remedy: 'Look at the joint and the wrench, and decide which entry holds; until then it is not final.',
      },
    ]
  })
}

function differ(a: Tightening, b: Tightening): boolean {
  const apart = (x: number | null | undefined, y: number | null | undefined) =>
    x != null && y != null && Math.abs(x - y) > SAME_TORQUE * Math.max(Math.abs(x), Math.abs(y))
  return apart(torqueOf(a), torqueOf(b)) || apart(a.angle?.value, b.angle?.value)
}

const textOf = ({ torque, setting, angle }: Tightening): string =>
  `“${[(torque ?? setting)?.text, angle?.text].filter((text) => text !== undefined).join(' and ')}”`
