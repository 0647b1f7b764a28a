import { Refusal } from '../quantity/index.ts'
import type { Followed } from './follow.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Mechanism } from './mechanism.ts'
import type { Drive } from './points.ts'

/** The refusal for a drive past the end of the way. */
export function unreachable(m: Mechanism, { travel, rack }: Drive, end: Followed): Refusal<LinkageRefusal> {
  const share = end.share
  return new Refusal<LinkageRefusal>({
    code: 'unreachable',
    at: travel !== 0 ? 'travel' : 'rack',
    given: `travel ${travel} m, rack ${rack} m`,
    sentence: `The corner cannot get there: the way ends at travel ${(share * travel * 1000).toFixed(2)} mm, rack ${(share * rack * 1000).toFixed(2)} mm.`,
    remedy: `Ask for less. ${m.points.layout}`,
  })
}
