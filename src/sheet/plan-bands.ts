import { type Action, type Assembly, type State, stationOf } from '../plan/index.ts'

/** Actions that are done while the vehicle stands as it stands. */
interface ActionBand {
  readonly station: string
  readonly actions: readonly Action[]
}

/**
 * Actions in bands of one station each, in whatever order they are given: a band ends where an action changes how the
 * vehicle stands. What only passes, such as a vehicle on a jack on its way to the stands, belongs to the band before.
 *
 * @source definition
 */
export function planBands(
  assembly: Assembly,
  actions: readonly Action[],
  from: State = {},
): readonly ActionBand[] {
  const bands: { station: string; actions: Action[] }[] = []
  const state: Record<string, string> = { ...from }
  for (const action of actions) {
    const station = stationOf(assembly, state)
    const last = bands.at(-1)
    if (last && (last.station === station || passing.test(station))) last.actions.push(action)
    else bands.push({ station, actions: [action] })
    Object.assign(state, action.effects)
  }
  return bands
}

const passing = /on a jack|on stands$|on the lift$/
