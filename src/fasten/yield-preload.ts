import { type Newton, newton, type Pascal } from '../quantity/index.ts'
import { fastenRefusal, notNegative, positive } from './fasten-refusal.ts'
import type { Thread } from './thread.ts'

/** A bolt stretched and twisted at once. @source definition */
export interface YieldJob {
  readonly thread: Thread
  /** Yield stress of its class. */
  readonly yield: Pascal
  readonly threadFriction: number
  /** Share of the yield stress used, 0 … 1. */
  readonly share: number
}

// 1/cos 30° and the 3/2 of a fully plastic round section, as VDI 2230 prints them.
const FLANKS = 1.155
const PLASTIC = 1.5

/**
 * The preload at which a bolt being tightened uses this share of its yield stress, tension and twist together:
 *
 *     F = As·ν·Rp / √(1 + 3·[1.5·(d2/d0)·(P/(π·d2) + 1.155·μ)]²)
 *
 * @throws {Refusal} `not-positive`, `not-finite`; `bad-range` for a share above 1
 * @source VDI 2230 Part 1, tables A1 and their formula, read in a public copy; d0 the diameter of the stress area
 * @example yieldPreload({ thread: parseThread('M12'), yield: pascal(640e6), threadFriction: 0.14, share: 0.9 }) // 41980.7
 */
export function yieldPreload({ thread, yield: flow, threadFriction, share }: YieldJob): Newton {
  if (positive(share, 'share') > 1)
    throw fastenRefusal({
      code: 'bad-range',
      at: 'share',
      given: String(share),
      sentence: `A share of ${share} of the yield stress is more than all of it.`,
      remedy: 'Give a share up to 1; 0.9 is what the tables use.',
    })
  const mu = notNegative(threadFriction, 'thread friction')
  const { pitch: p, pitchDiameter: d2, stressDiameter: d0 } = thread
  const twist = PLASTIC * (d2 / d0) * (p / (Math.PI * d2) + FLANKS * mu)
  return newton(
    (thread.stressArea * share * positive(flow, 'yield')) / Math.sqrt(1 + (2 + 1) * twist * twist),
  )
}
