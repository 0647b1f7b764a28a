import { halfWidth, type Measured } from '../measure/index.ts'
import { type NewtonMetre, Refusal } from '../quantity/index.ts'
import { checkWrench } from './check-wrench.ts'
import { inOrder, positive } from './fasten-refusal.ts'
import { onScale } from './on-scale.ts'
import { settingOn } from './setting-on.ts'
import { torqueReceived, type WrenchInHand } from './torque-received.ts'
import type { Adapter, TorqueWrench } from './torque-wrench.ts'

/** Which wrench for this torque? @source definition */
export interface WrenchQuestion {
  readonly torque: NewtonMetre
  /** What the fastener may receive, where floor and ceiling are stated. */
  readonly floor?: NewtonMetre | undefined
  readonly ceiling?: NewtonMetre | undefined
  readonly wrenches: readonly TorqueWrench[]
  /** How the fastener can be reached; null among them where a socket on the drive does. */
  readonly adapters: readonly (Adapter | null)[]
  readonly today: string
  readonly uncalibrated?: 'refuse' | 'warn' | undefined
}

/** A wrench that can, best first. @source definition */
export interface RankedWrench extends WrenchInHand {
  /** What the fastener receives at that mark. */
  readonly received: Measured
  /** Share of the torque it may be off by: half of its 95 % interval and what rounding to the scale leaves. */
  readonly off: number
  readonly warnings: readonly string[]
}

/** A wrench that cannot, and why. @source definition */
export interface UnfitWrench {
  readonly wrench: TorqueWrench
  readonly adapter: Adapter | null
  readonly refusal: Refusal
}

/**
 * Wrenches and adapters by what the fastener may be off by, the best first; those that cannot give it, with the reason.
 *
 * @throws {Refusal} `not-positive`, `not-finite`; `bad-range` when floor and ceiling are crossed
 * @source JCGM 100:2008, 5.1.2; the order: own derivation: docs/methods/wrench-adapter.md
 * @example rankWrenches({ torque: Nm(90), wrenches: [longWrench], adapters: [null], today: '2026-11-25' }).fit.length // 1
 */
export function rankWrenches(question: WrenchQuestion): {
  readonly fit: readonly RankedWrench[]
  readonly unfit: readonly UnfitWrench[]
} {
  const { torque, floor, ceiling, wrenches, adapters } = question
  positive(torque, 'torque')
  inOrder({ low: floor ?? 0, high: ceiling ?? Math.max(torque, floor ?? 0) }, 'floor and ceiling')
  const fit: RankedWrench[] = []
  const unfit: UnfitWrench[] = []
  for (const wrench of wrenches)
    for (const adapter of adapters)
      try {
        fit.push(ranked(question, wrench, adapter))
      } catch (refusal) {
        if (!(refusal instanceof Refusal)) throw refusal
        unfit.push({ wrench, adapter, refusal })
      }
  return { fit: fit.sort((a, b) => a.off - b.off), unfit }
}

function ranked(
  { torque, floor, ceiling, today, uncalibrated }: WrenchQuestion,
  wrench: TorqueWrench,
  adapter: Adapter | null,
): RankedWrench {
  const onWrench = (wanted: NewtonMetre) => settingOn(wrench, adapter, wanted)
  const exact = onWrench(torque)
  const warnings = checkWrench({ wrench, setting: exact, today, uncalibrated })
  const setting = onScale({
    setting: exact,
    scale: wrench.scale,
    unit: wrench.unit,
    floor: floor && onWrench(floor),
    ceiling: ceiling && onWrench(ceiling),
  })
  const received = torqueReceived({ wrench, adapter, setting })
  return {
    wrench,
    adapter,
    setting,
    received,
    warnings,
    off: (halfWidth(received) + Math.abs(received.value - torque)) / torque,
  }
}
