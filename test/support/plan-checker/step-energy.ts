import type { Action } from '../../../src/plan/index.ts'
import { onVehicle, whereOf } from './look.ts'
import type { State } from './state.ts'
import type { Vehicle } from './vehicle.ts'

/** What an action on stored energy does. */
export function energies(vehicle: Vehicle, state: State, action: Action): State {
  const { verb } = action
  const store = vehicle.stores.find(({ id }) => id === action.hold)
  const where = store ? whereOf(store) : whereOf(action)
  const to = (energy: State['energy'][string], arm?: State['arms'][string]): State => ({
    ...state,
    energy: store ? { ...state.energy, [store.id]: energy } : state.energy,
    arms: arm ? { ...state.arms, [where]: arm } : state.arms,
  })
  switch (verb) {
    case 'jack under arm':
    case 'raise the arm':
      return to('jack', 'jack')
    case 'let down with the jack':
      return to('down', 'down')
    case 'raise to ride height':
      return { ...state, arms: { ...state.arms, [where]: 'ride' } }
    case 'jack away':
      return store ? to('set', 'free') : { ...state, arms: { ...state.arms, [where]: 'free' } }
    case 'compress':
      return to('compressor')
    case 'release compressor': {
      // Let out on the bench: nothing of it is under what kept it in.
      const isOut =
        store !== undefined &&
        !onVehicle(state, store.id) &&
        (vehicle.tiesOf(store.id).every(({ id }) => state.ties[id]!.is === 'open') ||
          store.lists.every((list) => list.some((id) => state.ties[id]!.is === 'open')))
      return to(isOut ? 'down' : 'set')
    }
    case 'unwind':
    case 'deflate':
      return to('down')
    case 'wind':
    case 'let air in':
      return to('set')
    case 'axle on stands':
    case 'axle off stands': {
      const own = vehicle.stores.filter((one) => one.axle === action.axle && one.onAxleStands)
      const [from, into] = verb === 'axle on stands' ? (['set', 'down'] as const) : (['down', 'set'] as const)
      const changed = own.filter(({ id }) => state.energy[id] === from).map(({ id }) => [id, into] as const)
      return { ...state, energy: { ...state.energy, ...Object.fromEntries(changed) } }
    }
    default:
      return state
  }
}
