import { halfWidth, type Measured } from '../../measure/index.ts'
import {
  deg,
  formatMeasured,
  inch,
  type KindInUnit,
  lbfFt,
  lbfIn,
  mm,
  type TorqueUnit,
} from '../../quantity/index.ts'
import type { SumNumber } from './sum-answer.ts'

/** A number of an answer with its text. */
export interface Shown extends SumNumber {
  /** "119.3 N·m ± 0.6 N·m" */
  readonly text: string
}

const ones: Readonly<Record<string, number>> = {
  '°': deg(1),
  mm: mm(1),
  in: inch(1),
  N·m: 1,
  lbf·ft: lbfFt(1),
  lbf·in: lbfIn(1),
  turn: 1,
}

/** A measured value with half its 95 % interval, in no more digits than that deserves. */
export function shown(name: string, measured: Measured, unit: KindInUnit & { digits?: number }): Shown {
  const within = halfWidth(measured)
  const one = ones[unit.unit]
  if (one === undefined) throw new Error(`No sum is told in ${unit.unit}.`)
  const { text, spread } = formatMeasured({ digits: 2, ...unit, value: measured.value, halfWidth: within })
  return {
    name,
    value: measured.value / one,
    within: within / one,
    unit: unit.unit,
    text: spread === '' ? text : `${text} ${spread}`,
  }
}

/** The unit of torque that the person wrote, where it is another than N·m. */
export const torqueUnitOf = (text: string): Exclude<TorqueUnit, 'N·m' | 'kgf·m'> | null =>
  /(ft|feet|foot)/i.test(text) ? 'lbf·ft' : /in/i.test(text) ? 'lbf·in' : null
