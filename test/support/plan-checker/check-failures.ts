import type { Corner } from '../../../src/corner/index.ts'
import type { Action, Goal } from '../../../src/plan/index.ts'
import { onVehicle, tieOf } from './look.ts'
import { soundVehicle } from './state.ts'
import { step } from './step.ts'
import { type Tie, type Vehicle, vehicleOf } from './vehicle.ts'

const burning = ['hose', 'lead', 'damper', 'strut', 'body', 'sub-frame']
const gentle = ['soak', 'lever', 'clamp', 'grip', 'strap', 'press', 'impact']

/**
 * What the rules ask of ways to free what does not come undone, held against an order by the checker's own state:
 * heat, hammer, saw, what catches a taper, what comes new before a joint is closed.
 *
 * Rules: I5, I13, and no saw beside a loaded spring. Common practice, no source.
 */
export function checkFailures(
  corners: readonly Corner[],
  goal: Goal,
  actions: readonly Action[],
): readonly string[] {
  const vehicle = vehicleOf(corners)
  const found: string[] = []
  const caught = new Set<string>()
  const bushes = new Map<string, 'sawn' | 'new'>()
  let state = soundVehicle(vehicle)
  for (const action of actions) {
    const tie = tieOf(vehicle, action)
    const aid = action.how['aid']
    const at = `${action.id}:`
    if (tie && aid === 'heat') found.push(...heated(vehicle, goal, tie).map((one) => `${at} ${one}`))
    if (tie && aid === 'hammer' && !tie.ends.some((end) => goal.replace.includes(end)))
      found.push(`${at} hammer on what is used again`)
    if (tie && aid === 'cut' && tie.ends.some((end) => onVehicle(state, end)))
      for (const spring of springsAt(vehicle, tie))
        if (!['down', 'compressor'].includes(state.energy[spring]!))
          found.push(`${at} a saw beside ${spring}, which is ${state.energy[spring]}`)
    if (tie && aid && !gentle.includes(aid) && !/oggles/.test(action.cautions.join()))
      found.push(`${at} no goggles`)
    if ((aid === 'heat' || aid === 'cut') && !/fire/.test(action.records.join()))
      found.push(`${at} nobody watches for fire`)
    if (tie && action.verb === 'crack') {
      if (action.how['caught']) caught.add(tie.id)
      const isLost = aid === 'cut' || aid === 'split'
      if (isLost && tie.kind.startsWith('tapered') && !caught.has(tie.id))
        found.push(`${at} the nut is gone and nothing catches the taper`)
    }
    if (tie && action.verb === 'open' && aid === 'cut' && isSleeve(tie)) bushes.set(tie.id, 'sawn')
    if (tie && action.verb === 'mend') {
      if (state.ties[tie.id]!.is !== 'open') found.push(`${at} mended while it is closed`)
      if (tie.file.bush && onVehicle(state, action.part!)) found.push(`${at} a bush pressed on the vehicle`)
      bushes.set(tie.id, 'new')
    }
    if (tie && ['start', 'run up'].includes(action.verb) && bushes.get(tie.id) === 'sawn')
      if (!tie.ends.some((end) => goal.replace.includes(end))) found.push(`${at} closed without its bush`)
    state = step(vehicle, goal, state, action)
  }
  return found
}

const isSleeve = ({ kind, file }: Tie) =>
  file.bush?.bonded === true && ['bolt', 'eccentric bolt', 'slotted bolt', 'shackle bolt'].includes(kind)

function heated(vehicle: Vehicle, { replace }: Goal, tie: Tie): readonly string[] {
  const around = tie.ends.flatMap((end) => vehicle.tiesOf(end))
  const kept = tie.ends.filter((end) => !replace.includes(end))
  const near = around
    .flatMap(({ ends }) => ends)
    .filter((end) => burning.includes(vehicle.parts.get(end)!.kind))
  const bonded = around.filter(({ file }) => file.bush?.bonded)
  return [
    ...kept.map((end) => `heat on ${end}, which stays`),
    ...near.map((end) => `heat beside ${end}`),
    ...bonded.map(({ id }) => `heat beside the bush of ${id}`),
  ]
}

/** Springs that hang on a joint or stand on one of its moving parts; not one that is shut in its strut. */
function springsAt(vehicle: Vehicle, tie: Tie): readonly string[] {
  const moving = tie.ends.filter((end) => !['body', 'sub-frame'].includes(vehicle.parts.get(end)!.kind))
  return vehicle.stores
    .filter(({ all }) => !all.some((id) => vehicle.ties.get(id)!.kind === 'strut top nut'))
    .filter(({ axle, side }) => axle === tie.axle && (!side || !tie.side || side === tie.side))
    .filter(
      ({ id, all }) =>
        all.includes(tie.id) ||
        moving.includes(id) ||
        vehicle.tiesOf(id).some(({ ends }) => ends.some((end) => moving.includes(end))),
    )
    .map(({ id }) => id)
}
