import { mechanism } from '../../linkage/index.ts'
import { geometryOf, poseRow } from './answer-case.ts'
import { inverseRow } from './inverse-row.ts'
import { isPlain, readGeometry } from './read-geometry.ts'
import { checkRowFinite, withNonFinite } from './row-input.ts'
import { answered, badInput, isRefused } from './row-refusal.ts'

type Plain = Readonly<Record<string, unknown>>

const echoed = [
  'id',
  'geometry',
  'travel',
  'rack',
  'theta_front_deg',
  'theta_rear_deg',
  'tie_delta',
  'inverse_target_delta',
  'nonfinite_strings',
]

/** One row of a file of bad input: a refusal, or the pose with `error` null. */
export function answerBad(given: unknown): Plain {
  const answer = answered(() => answerGood(given))
  const back = isPlain(given)
    ? Object.fromEntries(echoed.flatMap((name) => (name in given ? [[name, given[name]]] : [])))
    : { id: null }
  return isRefused(answer) ? { ...back, ...answer } : { ...back, error: null, ...answer }
}

function answerGood(given: unknown): Plain {
  if (!isPlain(given)) throw badInput('bad', 'A row is not an object.', 'Give id, geometry, travel and rack.')
  const row = (given['nonfinite_strings'] === true ? withNonFinite(given) : given) as Plain
  const raw = geometryOf(row)
  checkRowFinite(raw, row)
  const geometry = readGeometry(raw)
  mechanism(geometry.points)
  const pose = poseRow(geometry, row)
  if (row['inverse_target_delta'] === undefined || row['inverse_target_delta'] === null) return pose
  const { pose: _, ...inverse } = inverseRow(geometry, row['inverse_target_delta'])
  return { ...pose, ...inverse }
}
