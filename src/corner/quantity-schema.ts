import * as z from 'zod'
import {
  exactText,
  inDegrees,
  parseAngle,
  parseDistance,
  parseForce,
  parseLength,
  parsePercent,
  parsePressure,
  parseStiffness,
  parseToe,
  parseTorque,
  parseTurns,
  Refusal,
} from '../quantity/index.ts'
import { parseClock } from './parse-clock.ts'
import { parseRate } from './parse-rate.ts'
import { plainDigits } from './plain-digits.ts'

/** A quantity as it was typed, and what it means in SI. @source definition */
export interface Typed<N extends number = number> {
  readonly text: string
  readonly value: N
}

/** What a text of this kind is called when it is wrong. */
const right = {
  length: 'a length with its unit, such as "352 mm"',
  positive: 'a length above zero with its unit, such as "352 mm"',
  angle: 'an angle with its unit, such as "-0.9°" or "0°15′"',
  toe: 'an angle such as "0.1°", or a length at a diameter such as "1.5 mm @ 400 mm"',
  torque: 'a torque with its unit, such as "190 N·m" or "95 lbf·ft"',
  turns: 'turns, such as "5/12 turn" or "-5 turns"',
  stiffness: 'a torque for an angle, such as "1.9 N·m/°"',
  pressure: 'a pressure with its unit, such as "240 kPa" or "2.4 bar"',
  distance: 'a distance with its unit, such as "80 km"',
  force: 'a force with its unit, such as "7.4 kN"',
  rate: 'a force for a length, such as "31 N/mm"',
  share: 'a percentage, such as "40 %"',
  clock: 'a clock position, such as "4 o\'clock" or "10:30"',
}
type What = keyof typeof right

const parsers = {
  length: parseLength,
  positive: (text: string) => above0(parseLength(text), text),
  angle: parseAngle,
  toe: parseToe,
  torque: parseTorque,
  turns: parseTurns,
  stiffness: parseStiffness,
  pressure: parsePressure,
  distance: parseDistance,
  force: parseForce,
  rate: parseRate,
  share: parsePercent,
  clock: parseClock,
}

function above0<N extends number>(value: N, text: string): N {
  if (value > 0) return value
  throw new Refusal({
    code: 'not-positive',
    at: 'text',
    given: text,
    sentence: `“${text}” is not above zero.`,
    remedy: 'Measure it again or check the sign.',
  })
}

/** The text that a written file has for an SI value: one unit per kind, read back as the same number. */
const written: Record<What, (value: number) => string> = {
  length: (value) => exactText({ value, kind: 'length', unit: 'mm' }),
  positive: (value) => exactText({ value, kind: 'length', unit: 'mm' }),
  angle: (value) => exactText({ value, kind: 'angle', unit: '°' }),
  toe: (value) => exactText({ value, kind: 'angle', unit: '°' }),
  torque: (value) => exactText({ value, kind: 'torque', unit: 'N·m' }),
  turns: (value) => exactText({ value, kind: 'turns', unit: 'turn' }),
  stiffness: (value) => `${plainDigits((value * Math.PI) / 180)} N·m/°`,
  pressure: (value) => exactText({ value, kind: 'pressure', unit: 'kPa' }),
  distance: (value) => exactText({ value, kind: 'distance', unit: 'km' }),
  force: (value) => exactText({ value, kind: 'force', unit: 'N' }),
  rate: (value) => `${plainDigits(value / 1000)} N/mm`,
  share: (value) => `${plainDigits(value * 100)} %`,
  clock: (value) => `${plainDigits(inDegrees(value))}°`,
}

const textOf = (what: What) => z.string({ error: () => right[what] }).describe(right[what])

/** Parses for a schema: a refusal becomes an issue with what is wrong and what would be right. */
function parsed<W extends What>(
  what: W,
  text: string,
  issues: { push(issue: z.core.$ZodRawIssue): unknown },
): ReturnType<(typeof parsers)[W]> {
  try {
    return parsers[what](text) as ReturnType<(typeof parsers)[W]>
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal
    issues.push({
      code: 'custom',
      input: text,
      message: refusal.sentence,
      params: { right: right[what] },
      continue: true,
    })
    return z.NEVER
  }
}

const si = <W extends What>(what: W) =>
  z.codec(textOf(what), z.custom<ReturnType<(typeof parsers)[W]>>(), {
    decode: (text, ctx) => parsed(what, text, ctx.issues),
    encode: (value) => written[what](value),
  })

const typed = <W extends What>(what: W) =>
  z.codec(textOf(what), z.custom<Typed<ReturnType<(typeof parsers)[W]>>>(), {
    decode: (text, ctx) => ({ text, value: parsed(what, text, ctx.issues) }),
    encode: ({ text }) => text,
  })

/** Texts that become plain SI numbers; written back in one unit per kind. @source definition */
export const lengthText = si('length')
/** A length above zero. @source definition */
export const positiveLength = si('positive')
/** An angle. @source definition */
export const angleText = si('angle')
/** Turns of a thread. @source definition */
export const turnsText = si('turns')
/** Stiffness of a bush. @source definition */
export const stiffnessText = si('stiffness')
/** A force. @source definition */
export const forceText = si('force')
/** A rate at the wheel, N/m. @source definition */
export const rateText = si('rate')
/** A percentage, 1 = 100 %. @source definition */
export const shareText = si('share')
/** A clock position, rad clockwise from 12 o'clock. @source definition */
export const clockText = si('clock')

/** Texts that keep how they were typed beside what they mean, and are written back as typed. @source definition */
export const typedLength = typed('length')
/** A length above zero, as typed. @source definition */
export const typedPositive = typed('positive')
/** An angle, as typed. @source definition */
export const typedAngle = typed('angle')
/** Toe as an angle or as a length at a diameter, as typed. @source definition */
export const typedToe = typed('toe')
/** A torque, as typed. @source definition */
export const typedTorque = typed('torque')
/** Turns, as typed. @source definition */
export const typedTurns = typed('turns')
/** A pressure, as typed. @source definition */
export const typedPressure = typed('pressure')
/** A distance driven, as typed. @source definition */
export const typedDistance = typed('distance')
/** A percentage, as typed. @source definition */
export const typedShare = typed('share')
/** A clock position, as typed. @source definition */
export const typedClock = typed('clock')
