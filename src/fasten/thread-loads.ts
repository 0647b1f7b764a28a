import { type Newton, newton } from '../quantity/index.ts'
import { strengthOf } from './strength.ts'
import type { Thread } from './thread.ts'

/** What a bolt bears at the least. @source definition */
export interface ThreadLoads {
  readonly proof: Newton
  readonly yield: Newton
  readonly ultimate: Newton
}

/**
 * Proof, yield and ultimate load of a bolt: stress area times the stress of its class. Printed tables round
 * the area to three figures first, so they differ by up to 0.5 %.
 *
 * @param strength class or grade as written: "8.8", "grade 5"
 * @throws {Refusal} `unknown-strength`
 * @source ISO 898-1:2013, 9.1.6.1 and tables 4–7; SAE J429
 * @example threadLoads(parseThread('M12'), '10.9').proof // 69941
 */
export function threadLoads(thread: Thread, strength: string): ThreadLoads {
  const { proof, yield: flow, ultimate } = strengthOf(strength, thread)
  const { stressArea: area } = thread
  return { proof: newton(area * proof), yield: newton(area * flow), ultimate: newton(area * ultimate) }
}
