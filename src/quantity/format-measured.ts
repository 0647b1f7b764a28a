import { formatDecimal } from './format-decimal.ts'
import type {
  AngleUnit,
  DistanceUnit,
  ForceUnit,
  LengthUnit,
  MassUnit,
  PressureUnit,
  TorqueUnit,
} from './print-style.ts'

/** A kind with a unit that belongs to it. @source definition */
export type KindInUnit =
  | { readonly kind: 'length'; readonly unit: LengthUnit }
  | { readonly kind: 'angle'; readonly unit: AngleUnit }
  | { readonly kind: 'torque'; readonly unit: TorqueUnit }
  | { readonly kind: 'force'; readonly unit: ForceUnit }
  | { readonly kind: 'pressure'; readonly unit: PressureUnit }
  | { readonly kind: 'mass'; readonly unit: MassUnit }
  | { readonly kind: 'distance'; readonly unit: DistanceUnit }
  | { readonly kind: 'turns'; readonly unit: 'turn' }

/**
 * A measured value and its spread, both rounded at the same place: "−0.92°" and "± 0.12°".
 *
 * @param measured value and half-width in SI; `digits` decides where the half-width is zero
 * @returns `spread` is empty where the half-width is zero
 * @throws {Refusal} `bad-spread` if the half-width is below zero or not finite, or zero without `digits`; `bad-style`, `not-finite`
 * @source JCGM 100:2008, 7.2.6; own derivation: docs/methods/printing-numbers.md
 * @example formatMeasured({ value: deg(-0.9234), halfWidth: deg(0.12), kind: 'angle', unit: '°' }) // {"text":"−0.92°","spread":"± 0.12°"}
 */
export function formatMeasured({
  value,
  halfWidth,
  kind,
  unit,
  digits,
  sign,
}: {
  readonly value: number
  readonly halfWidth: number
  readonly digits?: number | undefined
  readonly sign?: boolean | undefined
} & KindInUnit): { text: string; spread: string } {
  const { text, spread } = formatDecimal(value, kind, { unit, spread: halfWidth, digits, sign })
  return { text, spread: spread === null ? '' : `± ${spread}` }
}
