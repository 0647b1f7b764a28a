import { type AxleSetup, type Moves, reachMap } from '../adjust/index.ts'
import type { ReadingName, Side } from '../linkage/index.ts'
import type { Limit } from '../spec/index.ts'
import type { RoundReadings } from './read-round.ts'
import type { SheetReach } from './sheet.ts'
import { sleeveReach } from './sleeve-reach.ts'

/** The reach map of each wheel of an axle whose camber and caster were read. */
export function sheetReach(task: {
  readonly setup: AxleSetup
  readonly said: RoundReadings
  readonly answer: Moves | null
  readonly limits: Readonly<Partial<Record<ReadingName, Limit>>>
}): readonly SheetReach[] {
  const { setup, said, answer, limits } = task
  return (['left', 'right'] as const).flatMap((side: Side): SheetReach[] => {
    const name = (angle: 'camber' | 'caster') => `${setup.end} ${side} ${angle}` as ReadingName
    const [camber, caster] = [said.readings[name('camber')], said.readings[name('caster')]]
    const { adjusters } = setup[side]
    if (!camber || !caster || adjusters.length === 0) return []
    const moves = (answer?.moves ?? [])
      .filter((move) => move.end === setup.end && move.side === side && move.job !== 'toe' && move.known)
      .map((move) => ({ id: move.adjuster.id, to: move.to, label: String(move.order) }))
    const foreseen = (angle: 'camber' | 'caster') =>
      answer?.foreseen.find((one) => one.name === name(angle))?.after
    const [afterCamber, afterCaster] = [foreseen('camber'), foreseen('caster')]
    const task = {
      now: { camber: camber.measured, caster: caster.measured },
      moves,
      ...(afterCamber && afterCaster ? { after: { camber: afterCamber, caster: afterCaster } } : {}),
    }
    const map =
      'axle' in setup ? sleeveReach({ set: setup[side], ...task }) : reachMap({ wheel: setup[side], ...task })
    if (!map) return []
    const [a, b] = [limits[name('camber')], limits[name('caster')]]
    return [
      {
        side,
        title: `Reach map, ${side} ${setup.end}`,
        ...map,
        limit: a && b ? { camber: [a.low, a.high], caster: [b.low, b.high] } : null,
      },
    ]
  })
}
