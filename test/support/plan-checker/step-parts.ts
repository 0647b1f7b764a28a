import type { Action } from '../../../src/plan/index.ts'
import { onVehicle, pieceOf } from './look.ts'
import type { PartIs, State, TieIs } from './state.ts'
import type { Vehicle } from './vehicle.ts'

/** A part off the vehicle with all that hangs on it, or a caliper on its hook. */
export function takenOff(vehicle: Vehicle, state: State, action: Action): State {
  const id = action.part ?? ''
  const part = vehicle.parts.get(id)
  if (!part) return state
  if (action.verb === 'hang')
    return { ...state, pedal: 'soft', parts: { ...state.parts, [id]: { ...state.parts[id]!, is: 'hung' } } }
  const piece = [...pieceOf(vehicle, state, id)].filter((one) => one !== 'body')
  const gone = pieceOf(vehicle, state, id).has('body') ? [id] : piece
  const kinds = gone.map((one) => vehicle.parts.get(one)!.kind)
  return {
    ...state,
    ties: { ...state.ties, ...seatsOf(vehicle, state, gone, 'open') },
    parts: {
      ...state.parts,
      ...Object.fromEntries(gone.map((one): [string, PartIs] => [one, { ...state.parts[one]!, is: 'off' }])),
    },
    ...(kinds.includes('wheel') ? { wheelWasOff: true } : {}),
    ...(kinds.includes('caliper') || kinds.includes('brake pads') ? { pedal: 'soft' as const } : {}),
  }
}

/** The seats that a spring leaves, or finds again, when it goes and the part below it stays. */
function seatsOf(
  vehicle: Vehicle,
  state: State,
  moved: readonly string[],
  to: 'open' | 'final',
): Record<string, TieIs> {
  const found: Record<string, TieIs> = {}
  for (const id of moved)
    for (const tie of vehicle.tiesOf(id)) {
      if (tie.kind !== 'seat' || tie.ends.every((end) => moved.includes(end))) continue
      const now = state.ties[tie.id]!
      if (to === 'open' || now.is === 'open') found[tie.id] = { ...now, is: to, touched: true }
    }
  return found
}

/** A part back on the vehicle, with what is joined to it. */
export function fitted(vehicle: Vehicle, state: State, action: Action): State {
  const id = action.part ?? ''
  if (!vehicle.parts.has(id)) return state
  const piece =
    state.parts[id]!.is === 'off'
      ? [...pieceOf(vehicle, state, id)].filter((one) => !onVehicle(state, one))
      : [id]
  return {
    ...state,
    ties: { ...state.ties, ...seatsOf(vehicle, state, piece, 'final') },
    parts: {
      ...state.parts,
      ...Object.fromEntries(
        piece.map((one): [string, PartIs] => {
          const ties = vehicle.tiesOf(one).filter(({ kind }) => kind !== 'seat')
          const loose = ties.length > 0 && ties.every(({ id: tie }) => state.ties[tie]!.is === 'open')
          return [one, { ...state.parts[one]!, is: 'fitted', loose }]
        }),
      ),
    },
  }
}
