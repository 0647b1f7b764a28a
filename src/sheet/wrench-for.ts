import {
  type Adapter,
  castleOnScale,
  type Joint,
  type RankedWrench,
  rankWrenches,
  type StatedTorque,
  type TorqueWrench,
} from '../fasten/index.ts'
import { adapterOf, type Kit, torqueWrenchesOf } from '../kit/index.ts'
import { Refusal, rad } from '../quantity/index.ts'

/** The wrench for a torque, as it stands in the kit and as it is set. */
export interface ChosenWrench {
  /** Its place in the kit. */
  readonly id: string
  readonly adapterId: string | null
  readonly ranked: RankedWrench
}

/** What was looked for and why there is none. */
export interface NoWrench {
  readonly whyNot: readonly string[]
}

/**
 * The wrench of the kit that leaves the fastener least unsure of its torque. A lock nut on a rod takes no socket, so it
 * is asked of the adapters; everything else of the bare drive, and of the adapters only when no bare wrench covers it.
 *
 * @param today for calibrations; a wrench of which nobody wrote down how long it is calibrated is only warned of
 * @returns what keeps each wrench out where none will do
 * @source own derivation: docs/methods/wrench-adapter.md
 */
export function wrenchFor({
  kit,
  joint,
  stated,
  rod,
  today,
}: {
  readonly kit: Kit
  readonly joint: Joint
  readonly stated: StatedTorque
  /** A rod goes through it: no socket. */
  readonly rod: boolean
  readonly today: string
}): ChosenWrench | NoWrench {
  const wrenches = Object.entries(torqueWrenchesOf(kit))
  const adapters = Object.keys(kit.adapters ?? {}).map(
    (id) => [id, adapterOf(kit, id, rad(0))] as const satisfies readonly [string, Adapter | null],
  )
  const bare = [[null, null]] as const
  const whyNot: string[] = []
  for (const round of rod ? [adapters, bare] : [bare, adapters]) {
    const found: ChosenWrench[] = []
    for (const [adapterId, adapter] of round)
      for (const [id, wrench] of wrenches) {
        const { fit, unfit } = rankWrenches({
          ...stated,
          wrenches: [wrench],
          adapters: [adapter],
          today,
          uncalibrated: wrench.calibratedUntil === null ? 'warn' : 'refuse',
        })
        const why = fit[0] ? coversCastle(joint, wrench, adapter) : (unfit[0]?.refusal ?? null)
        if (fit[0] && why === null) found.push({ id, adapterId, ranked: fit[0] })
        else if (why) whyNot.push(`${wrench.name}${adapter ? ` with ${adapter.name}` : ''}: ${why.sentence}`)
      }
    const [best] = found.sort((a, b) => a.ranked.off - b.ranked.off)
    if (best) return best
  }
  return { whyNot: whyNot.length > 0 ? whyNot : ['The kit has no torque wrench.'] }
}

/** Floor and ceiling of a castle nut are both set on the wrench in the hand. */
function coversCastle({ procedure }: Joint, wrench: TorqueWrench, adapter: Adapter | null): Refusal | null {
  if (procedure.kind !== 'castle slot') return null
  try {
    castleOnScale({ floor: procedure.floor, ceiling: procedure.ceiling, wrench, adapter })
    return null
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal
    throw refusal
  }
}
