import { mechanism, poseAt, ratesAt, travelRange } from '../../linkage/index.ts'
import { inDegrees, metre } from '../../quantity/index.ts'
import { inverseRow } from './inverse-row.ts'
import { type ExchangeGeometry, isPlain, readGeometry } from './read-geometry.ts'
import { checkRowFinite, driveOf, standOf, withNonFinite } from './row-input.ts'
import { answered, badInput, isRefused } from './row-refusal.ts'
import { settledCorner, wishboneAdjusters } from './settled-corner.ts'
import { writePose } from './write-pose.ts'

type Plain = Readonly<Record<string, unknown>>

/** One case of a file of poses, every answer computed anew. */
export function answerCase(given: unknown): Plain {
  if (!isPlain(given)) return { id: null, ...answered(() => refuseCase('A case is not an object.')) }
  const item = (given['nonfinite_strings'] === true ? withNonFinite(given) : given) as Plain
  const raw = geometryOf(item)
  const geometry = (row: Plain): ExchangeGeometry => {
    checkRowFinite(raw, row)
    return readGeometry(raw)
  }
  const kept = Object.fromEntries(
    ['id', 'type', 'corner', 'geometry', 'nonfinite_strings'].flatMap((key) =>
      key in given ? [[key, given[key]]] : [],
    ),
  )
  const whole = answered(() => {
    const read = geometry({})
    return { read, m: mechanism(read.points) }
  })
  const rows = (key: string, answer: (row: Plain) => Plain): Plain =>
    key in item ? { [key]: answerRows(item[key], key, answer) } : {}
  return {
    ...kept,
    ...(isRefused(whole) ? whole : {}),
    ...rows('poses', (row) => poseRow(geometry(row), row)),
    ...rows('adjusted_poses', (row) => poseRow(geometry(row), row)),
    ...('sensitivities' in item ||
    (!isRefused(whole) && whole.read.adjusters && whole.read.points.layout === 'double wishbone')
      ? { sensitivities: answered(() => sensitivitiesRow(geometry({}))) }
      : {}),
    ...rows('inverse', (row) => {
      const { pose: _, ...answer } = inverseRow(geometry(row), row['target_delta'])
      return answer
    }),
    travel_limit_rack0: isRefused(whole) ? whole : answered(() => travelRange(whole.m, { rack: metre(0) })),
  }
}

/** The geometry of a case; its type may stand beside it. */
export function geometryOf(item: Plain): unknown {
  const geometry = item['geometry']
  return isPlain(geometry) && geometry['type'] === undefined && item['type'] !== undefined
    ? { ...geometry, type: item['type'] }
    : geometry
}

function refuseCase(sentence: string): never {
  throw badInput('cases', sentence, 'Give id, geometry and poses.')
}

/** Inputs of a row that are given back beside its answer. */
const echoed = ['travel', 'rack', 'theta_front_deg', 'theta_rear_deg', 'tie_delta', 'target_delta']

function answerRows(list: unknown, key: string, answer: (row: Plain) => Plain): unknown {
  if (!Array.isArray(list))
    return [
      answered(() => {
        throw badInput(key, `${key} is not a list.`, 'Give a list of rows.')
      }),
    ]
  return list.map((row: unknown) => {
    if (!isPlain(row))
      return answered(() => {
        throw badInput(key, 'A row is not an object.', 'Give travel and rack.')
      })
    const back = Object.fromEntries(echoed.flatMap((name) => (name in row ? [[name, row[name]]] : [])))
    return { ...back, ...answered(() => answer(row)) }
  })
}

/** A row of poses or adjusted poses. */
export function poseRow(geometry: ExchangeGeometry, row: Plain): Plain {
  const pose = poseAt(settledCorner(geometry, standOf(row)), driveOf(row))
  return { residual: pose.residual, out: writePose(pose) }
}

/** Rates at neutral: washers in degrees per degree, the tie rod in degrees per millimetre. */
function sensitivitiesRow(geometry: ExchangeGeometry): Plain {
  const { front, rear } = wishboneAdjusters(geometry)
  const m = mechanism(geometry.points)
  const rates = ratesAt(m, poseAt(m, { travel: metre(0), rack: metre(0) }))
  const along = ({ e, slot }: typeof front) => [e * slot[0], e * slot[1], e * slot[2]] as const
  const angles = (direction: Parameters<typeof rates>[0], scale: number) => {
    const { camber, caster, toe, sai } = rates(direction)
    return { camber: camber * scale, caster: caster! * scale, toe: toe * scale, sai: sai! * scale }
  }
  return {
    theta_front_deg_per_deg: angles({ body: { upperFrontInner: along(front) } }, 1),
    theta_rear_deg_per_deg: angles({ body: { upperRearInner: along(rear) } }, 1),
    tie_deg_per_mm: angles({ length: { tie: 1 } }, inDegrees(1) / 1000),
  }
}
