import type { Assembly, Goal } from '../plan/index.ts'
import type { PlanSheet } from './plan-sheet.ts'

/**
 * What may come new, by the corner models: every part of which something wears, and whatever the goal names besides.
 *
 * @source definition
 */
export const planChoices = (assembly: Assembly, goal: Goal | null): PlanSheet['choices'] =>
  Object.values(assembly.parts)
    .filter(({ id, kind, file }) => kind !== 'body' && (file.wears?.length || goal?.replace.includes(id)))
    .map(({ id, called, axle, side }) => ({
      id,
      words: called,
      wheel: side ? `${axle} ${side}` : `${axle} axle`,
      chosen: goal?.replace.includes(id) ?? false,
    }))
