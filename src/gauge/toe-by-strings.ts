import { type AxleEnd, axleReadings, type Side } from '../linkage/index.ts'
import { combine, type Measured, propagate, rectangular } from '../measure/index.ts'
import type { GaugeContext } from './gauge-context.ts'
import type { GaugeReading } from './gauge-reading.ts'
import { aboveZero, gaugeRefusal } from './gauge-refusal.ts'
import { instrumentOf } from './instrument-of.ts'
import type { WheelPlace } from './instruments.ts'
import { meanReading } from './mean-reading.ts'
import type { StringReadings, StringsObservation } from './observation.ts'
import { runOutLeft } from './run-out-left.ts'
import { sourceName } from './source-name.ts'
import { widenedByKnownPlay } from './widened-by-play.ts'

const PAGE = 'docs/methods/toe-strings-tape.md'

/**
 * Toe of each wheel against the vehicle's centre line, from strings and a rule; total toe and thrust where their
 * wheels were read; set-back where the hubs were measured along the strings.
 *
 *     toe = asin((front − rear)/span) ± lie     lie = ((right − left at front) − (right − left at rear))/(2·wheelbase)
 *
 * @throws {Refusal} `no-instrument`; `wrong-instrument`; `too-few`; `not-finite`; `not-positive`; `not-level` when an edge cannot be that far out
 * @source own derivation: docs/methods/toe-strings-tape.md
 */
export function toeByStrings(
  observation: StringsObservation,
  context: GaugeContext,
): readonly GaugeReading[] {
  const lie = stringsLie(observation, context)
  const toes = new Map<string, Measured>()
  const out: GaugeReading[] = []
  for (const [place, readings] of Object.entries(observation.wheels) as [
    WheelPlace,
    StringReadings | undefined,
  ][]) {
    if (!readings) continue
    const { measured, notes } = toeOfWheel(observation, context, { wheel: place, readings })
    const side = place.endsWith('left') ? 1 : -1
    const toe = widenedByKnownPlay(
      combine([
        { of: measured, times: 1 },
        { of: lie.turn, times: side },
        { of: lie.spread, times: 1 },
      ]),
      context.plays,
      { wheel: place, moves: 'toe' },
    )
    toes.set(`${place} toe`, toe.measured)
    out.push({
      name: `${place} toe`,
      measured: toe.measured,
      corrections: [{ name: 'strings', by: side * lie.turn.value }],
      notes: [...notes, ...toe.notes],
      formula: 'asin((front − rear)/span) ± how the strings lie',
      source: PAGE,
    })
  }
  if (out.length === 0)
    throw gaugeRefusal('too-few', 'wheels', 0, 'No wheel was read against the strings.', 'Read at least one.')
  return [...out, ...together(toes), ...setBack(observation, context)]
}

/** Angle of one wheel against its own string. */
function toeOfWheel(
  { id, rule: ruleId }: StringsObservation,
  context: GaugeContext,
  { wheel, readings: { front, rear, span } }: { wheel: WheelPlace; readings: StringReadings },
): { measured: Measured; notes: readonly string[] } {
  const rule = instrumentOf(context.instruments, ruleId, ['rule'])
  const [a, b] = [
    meanReading(front, rule, `${wheel} front edge, ${id}`),
    meanReading(rear, rule, `${wheel} rear edge, ${id}`),
  ]
  const across = aboveZero(span, `${wheel} span`)
  if (Math.abs(a.measured.value - b.measured.value) >= across)
    throw gaugeRefusal(
      'not-level',
      `${wheel} span`,
      span,
      `The edges of the ${wheel} rim differ by more than the ${Math.round(across * 1000)} mm between them.`,
      'Check the three numbers and their units.',
    )
  const angle = propagate(([f, r]) => Math.asin((f! - r!) / across), [a.measured, b.measured])
  const left = runOutLeft(context.runOut?.[wheel], { wheel, share: 1, where: `${id}, toe` })
  return {
    measured: combine([
      { of: angle, times: 1 },
      { of: left.measured, times: 1 },
    ]),
    notes: [...a.notes, ...b.notes, ...left.notes],
  }
}

/** How the strings lie against the vehicle: turned as a pair (+: adds toe-in at the left), and against each other. */
function stringsLie(
  { hubs, wheelbase, id, rule: ruleId, strings: stringsId }: StringsObservation,
  context: GaugeContext,
): { turn: Measured; spread: Measured } {
  const rule = instrumentOf(context.instruments, ruleId, ['rule'])
  const strings = instrumentOf(context.instruments, stringsId, ['strings'])
  const long = 2 * aboveZero(wheelbase, 'wheelbase')
  const hub = (place: WheelPlace, times: number) => ({
    of: meanReading([hubs[place]], rule, `${place} hub, ${id}`).measured,
    times: times / long,
  })
  return {
    turn: combine([hub('front right', 1), hub('front left', -1), hub('rear right', -1), hub('rear left', 1)]),
    // Spacing differs by up to ± spacing over the length: half of it turns each string, toe-in at both sides.
    spread: rectangular(
      strings.spacing / 2 / aboveZero(strings.length, 'strings.length'),
      sourceName('strings', `${strings.id}, ${id}`),
    ),
  }
}

/** Total toe, thrust and toe to thrust of the wheels that were read. */
function together(toes: ReadonlyMap<string, Measured>): GaugeReading[] {
  const out: GaugeReading[] = []
  for (const name of [
    'front total toe',
    'rear total toe',
    'thrust',
    'front left toe to thrust',
    'front right toe to thrust',
  ] as const) {
    const terms = axleReadings[name].map(([wheel, times]) => ({ of: toes.get(wheel), times }))
    if (terms.every((term): term is { of: Measured; times: number } => term.of !== undefined))
      out.push({
        name,
        measured: combine(terms),
        corrections: [],
        notes: [],
        formula: axleReadings[name]
          .map(([wheel, times]) => `${times < 0 ? '−' : '+'} ${Math.abs(times) === 1 ? '' : '½ '}${wheel}`)
          .join(' '),
        source: PAGE,
      })
  }
  return out
}

/** Right hub behind left, where both were measured back from the front bar. */
function setBack(
  { along, id, rule: ruleId, strings: stringsId }: StringsObservation,
  context: GaugeContext,
): GaugeReading[] {
  const rule = instrumentOf(context.instruments, ruleId, ['rule'])
  const strings = instrumentOf(context.instruments, stringsId, ['strings'])
  const out: GaugeReading[] = []
  for (const axle of ['front', 'rear'] as AxleEnd[]) {
    const at = (side: Side) => along?.[`${axle} ${side}`]
    const [left, right] = [at('left'), at('right')]
    if (left === undefined || right === undefined) continue
    const track = context.track?.[axle]
    if (track === undefined)
      throw gaugeRefusal(
        'no-floor-size',
        `${axle} track`,
        '',
        `Set-back of the ${axle} axle needs its track: a bar off square counts over it.`,
        'Measure the track to the nearest centimetre.',
      )
    out.push({
      name: `${axle} set-back`,
      measured: combine([
        { of: meanReading([right], rule, `${axle} right along, ${id}`).measured, times: 1 },
        { of: meanReading([left], rule, `${axle} left along, ${id}`).measured, times: -1 },
        {
          of: rectangular(strings.squareness, sourceName('strings', `${strings.id}, square, ${id}`)),
          times: track,
        },
      ]),
      corrections: [],
      notes: [],
      formula: 'right − left, measured back from the front bar',
      source: PAGE,
    })
  }
  return out
}
