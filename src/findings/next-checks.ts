import { checkMinutes } from './check-minutes.ts'
import { type CheckLeft, checksLeft } from './checks-left.ts'
import { dot } from './dot.ts'
import type { NextCheck } from './findings.ts'
import { type FurtherReading, furtherReadings } from './further-readings.ts'
import type { Foreseen } from './history.ts'
import type { Explained } from './hypothesis.ts'
import { logOfChecks } from './log-of-checks.ts'
import type { Suspect } from './suspect.ts'
import { outOfAdjustment } from './suspects-of.ts'
import { gainOfCheck, gainOfReading, type Outcome } from './told-apart.ts'
import type { Weighed } from './weighed.ts'

/** Suspects with less belief than this are left out of the question what to do next. @source own choice */
const worthwhile = 0.004
const most = 8
/** Nat: less than this is no reason to do anything. @source own choice */
const least = 0.01

interface Believed {
  readonly suspect: Suspect
  readonly belief: number
  readonly number: number
}

/**
 * Further readings and checks by hand, the most telling for its minutes first: how far each is expected to lower the
 * entropy over the suspects.
 *
 * @source own derivation: docs/methods/findings.md
 */
export function nextChecks(all: Weighed): readonly NextCheck[] {
  const believed = all.beliefs
    .map((belief, number): Believed => {
      const suspect = number === 0 ? outOfAdjustment : all.hypotheses[number - 1]!.family.suspect
      return { suspect, belief, number }
    })
    .filter(({ belief }) => belief >= worthwhile)
    .sort((a, b) => b.belief - a.belief)
  return [
    ...checksLeft(all.problem).map((check) => byHand(check, believed)),
    ...furtherReadings(all.problem, all.numbers).map((reading) => byReading(reading, believed, all)),
  ]
    .filter(({ gain }) => gain >= least)
    .sort((a, b) => b.gain / b.minutes - a.gain / a.minutes)
    .slice(0, most)
}

function byHand(left: CheckLeft, believed: readonly Believed[]): NextCheck {
  const outcomes = believed.map(({ suspect, belief }) => ({
    suspect,
    belief,
    shows: 1 - Math.exp(logOfChecks([{ ...left, found: ['nothing'] }], suspect)),
  }))
  const quiet = Math.min(...outcomes.map(({ shows }) => shows))
  const minutes = checkMinutes[left.check as keyof typeof checkMinutes]
  return {
    check: left.check,
    at: [left.wheel, left.joint ?? left.part].filter((x) => x !== null).join(', '),
    gain: gainOfCheck(outcomes),
    minutes,
    parts: outcomes.filter(({ shows }) => shows > 3 * quiet).map(({ suspect }) => suspect),
  }
}

/** The largest of what its differences would tell by themselves. */
function byReading(reading: FurtherReading, believed: readonly Believed[], all: Weighed): NextCheck {
  const { check, at, minutes, rows } = reading
  const tellings = rows.map((row) => {
    const outcomes = outcomesOf(row, believed, all)
    return { outcomes, gain: gainOfReading(outcomes) }
  })
  const best = tellings.reduce((a, b) => (b.gain > a.gain ? b : a))
  const [first] = best.outcomes
  const parts = believed.filter((_, k) => {
    const { mean, variance } = best.outcomes[k]!
    return Math.abs(mean - first!.mean) > 1.5 * Math.sqrt(Math.max(variance, first!.variance))
  })
  return { check, at, gain: best.gain, minutes, parts: parts.map(({ suspect }) => suspect) }
}

function outcomesOf(
  row: FurtherReading['rows'][number],
  believed: readonly Believed[],
  all: Weighed,
): readonly Outcome[] {
  const byStory = new Map<string, Foreseen>()
  const foreseenBy = ({ history }: Explained): Foreseen => {
    const known = byStory.get(history.story)
    if (known) return known
    const made = history.further(row)
    byStory.set(history.story, made)
    return made
  }
  return believed.map(({ number, belief }): Outcome => {
    const hypothesis = number === 0 ? null : all.hypotheses[number - 1]!
    const explained = hypothesis ? hypothesis.best : all.sound.best
    const { expected, drawn, variance } = foreseenBy(explained)
    let mean = expected + dot(drawn, explained.left)
    let spread = variance + row.spread ** 2
    explained.history.knobsNow.forEach((column, k) => {
      const by = dot(row.of, column)
      mean += explained.knobs[k]! * by
      spread += explained.knobVariance[k]! * by * by
    })
    if (hypothesis) {
      const by = dot(row.of, hypothesis.main)
      mean += hypothesis.size * by
      spread += (hypothesis.spread * by) ** 2
      hypothesis.sides.forEach((side, k) => {
        mean += hypothesis.beside[k]! * dot(row.of, side)
      })
    }
    return { belief, mean, variance: spread }
  })
}
