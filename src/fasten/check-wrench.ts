import { formatTorque, type NewtonMetre, Nm } from '../quantity/index.ts'
import { fastenRefusal, finite } from './fasten-refusal.ts'
import type { TorqueWrench } from './torque-wrench.ts'

/** A wrench about to be used. @source definition */
export interface WrenchCheck {
  readonly wrench: TorqueWrench
  /** What it would be set to. */
  readonly setting: NewtonMetre
  /** The day of the work, "2026-11-25". */
  readonly today: string
  /** What the workshop has decided for a wrench out of calibration. */
  readonly uncalibrated?: 'refuse' | 'warn' | undefined
}

const DATE = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/
/** Share of a wrench's largest torque where tests began before 2017. */
const FIRST_TEST_POINT = 0.2
const ROUNDING = 1e-9

/**
 * May this wrench be used for this setting today? Refuses, or returns the warnings that go with it.
 *
 * @returns sentences; none when there is nothing to say
 * @throws {Refusal} `outside-range`; `not-calibrated` unless the workshop only wants to be warned; `bad-date`; `not-finite`
 * @source ISO 6789:2003, 6.5 (test points 20, 60, 100 % of the largest torque); ISO 6789-1:2017 (range from the lowest mark)
 * @example checkWrench({ wrench: longWrench, setting: Nm(90), today: '2026-11-25' }).length // 0
 */
export function checkWrench({
  wrench,
  setting,
  today,
  uncalibrated = 'refuse',
}: WrenchCheck): readonly string[] {
  const { name, scale, unit, calibratedUntil } = wrench
  const say = (value: number) => formatTorque(Nm(value), { unit, digits: 1 })
  checkDate(today, 'today')
  if (calibratedUntil !== null) checkDate(calibratedUntil, 'calibratedUntil')
  const slack = ROUNDING * scale.high
  if (!(finite(setting, 'setting') >= scale.low - slack && setting <= scale.high + slack))
    throw fastenRefusal({
      code: 'outside-range',
      at: 'wrench',
      given: say(setting),
      sentence: `${say(setting)} is outside ${name}, which goes from ${say(scale.low)} to ${say(scale.high)}.`,
      remedy: 'Take another wrench; outside its range a wrench proves nothing.',
    })
  const warnings: string[] = []
  const fault =
    calibratedUntil === null
      ? `Nobody wrote down until when ${name} is calibrated.`
      : calibratedUntil < today
        ? `The calibration of ${name} ran out on ${calibratedUntil}.`
        : null
  if (fault !== null && uncalibrated === 'refuse')
    throw fastenRefusal({
      code: 'not-calibrated',
      at: 'wrench',
      given: calibratedUntil ?? 'unknown',
      sentence: fault,
      remedy: 'Take a calibrated wrench, or have this one calibrated and write down the date.',
    })
  if (fault !== null) warnings.push(fault)
  if (setting < FIRST_TEST_POINT * scale.high - slack)
    warnings.push(
      `${say(setting)} is below a fifth of what ${name} can do: wrenches tested before 2017 were not tested there.`,
    )
  return warnings
}

/** A calendar day as text. Days of one form sort as text. */
function checkDate(text: string, at: string): void {
  if (DATE.test(text)) return
  throw fastenRefusal({
    code: 'bad-date',
    at,
    given: text,
    sentence: `“${text}” is no day.`,
    remedy: 'Write it as year, month, day: 2026-11-25.',
  })
}
