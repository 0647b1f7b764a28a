import { combine, type Measured, normal, propagate, rectangular } from '../measure/index.ts'
import type { GaugeContext } from './gauge-context.ts'
import type { GaugeReading } from './gauge-reading.ts'
import { aboveZero, finiteReading, gaugeRefusal } from './gauge-refusal.ts'
import { instrumentOf } from './instrument-of.ts'
import { meanReading } from './mean-reading.ts'
import type { TapeObservation } from './observation.ts'
import { sourceName } from './source-name.ts'

/** Camber of both wheels together that a tilted measuring height has to reckon with, one standard deviation. */
const USUAL_CAMBER_SUM = 0.03

/**
 * Total toe of an axle from a tape between lines scribed on the treads, held below the hubs. The two points of one
 * tread lie closer together there than across its full diameter, so dividing by the diameter would read too little.
 *
 *     total toe = 2·asin((rear − front)/(4·half))     half = √(radius² − below²)
 *
 * The tape's own error stretches both readings alike and nearly cancels. A line scribed while the wheel turns has
 * no run-out.
 *
 * @throws {Refusal} `no-instrument`; `wrong-instrument`; `too-few`; `not-finite`; `not-positive`; `not-level` when the tape would pass above or below the tyre
 * @assumes toe shared evenly by both wheels; camber under a few degrees
 * @source own derivation: docs/methods/toe-strings-tape.md
 */
export function totalToeByTape(observation: TapeObservation, context: GaugeContext): GaugeReading {
  const { axle, id, front, rear, belowHub, levelled } = observation
  const tape = instrumentOf(context.instruments, observation.tape, ['tape'])
  const radius = aboveZero(observation.radius, 'radius')
  const below = finiteReading(belowHub, 'belowHub')
  if (Math.abs(below) >= radius)
    throw gaugeRefusal(
      'not-level',
      'belowHub',
      belowHub,
      `${Math.round(below * 1000)} mm from hub height there is no tread of ${Math.round(radius * 1000)} mm radius.`,
      'Measure the height of hub and tape again.',
    )
  const half = Math.sqrt(radius ** 2 - below ** 2)
  const [a, b] = [
    meanReading(front, tape, `${axle} axle, front line, ${id}`),
    meanReading(rear, tape, `${axle} axle, rear line, ${id}`),
  ]
  const stretched = (m: Measured): Measured =>
    combine([
      { of: m, times: 1 },
      { of: rectangular(tape.accuracy, sourceName('scale', tape.id)), times: m.value },
    ])
  const angle = (difference: number) => 2 * Math.asin(difference / (4 * half))
  const difference = b.measured.value - a.measured.value
  if (Math.abs(difference) >= half)
    throw gaugeRefusal(
      'not-level',
      'rear',
      difference,
      `Front and rear differ by ${Math.round(difference * 1000)} mm, which no axle can stand at.`,
      'Read both again.',
    )
  const measured = propagate(([f, r]) => angle(r! - f!), [stretched(a.measured), stretched(b.measured)])
  return {
    name: `${axle} total toe`,
    measured: combine([
      { of: measured, times: 1 },
      { of: heights(finiteReading(levelled, 'levelled'), id), times: USUAL_CAMBER_SUM / (2 * half) },
    ]),
    corrections: [
      { name: 'below hub height', by: measured.value - 2 * Math.asin(difference / (4 * radius)) },
    ],
    notes: [...a.notes, ...b.notes],
    formula: '2·asin((rear − front)/(4·√(radius² − below²)))',
    source: 'docs/methods/toe-strings-tape.md',
  }
}

/** Front and rear held at unlike heights let camber in: each height errs by itself. */
const heights = (levelled: number, id: string): Measured =>
  normal(levelled * Math.sqrt(2 / 3), sourceName('tape height', id))
