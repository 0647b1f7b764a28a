import { axleReadings, type ReadingName } from '../linkage/index.ts'
import type { Weighed } from './weighed.ts'

/** A reading that stands off so far from what everything else says is not explained, in standard deviations. @source own choice */
const far = 3.5

/** Readings that even the suspect that explains most leaves unexplained. @source own derivation: docs/methods/findings.md */
export function unexplainedBy({ rows, sound, hypotheses, explains }: Weighed): readonly ReadingName[] {
  const top = explains.indexOf(Math.max(...explains))
  const { history, left } = top === 0 ? sound.best : hypotheses[top - 1]!.best
  const standing = history.standing(left)
  return rows.read
    .filter(({ name }, k) => Math.abs(standing[k]!) > far && isReading(name))
    .map(({ name }) => name as ReadingName)
}

const isReading = (name: string): boolean =>
  name in axleReadings || /^(front|rear) (left|right) (camber|caster|sai|toe)$/.test(name)
