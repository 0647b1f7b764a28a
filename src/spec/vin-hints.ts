import { type VinCheck, vinCheck } from './vin-check.ts'

/** What can be said of a VIN as it was typed. @source definition */
export interface VinHints {
  /** Capitals, without spaces and hyphens. */
  readonly vin: string
  /** Whether it has 17 of the characters that ISO 3779 allows. */
  readonly fits: boolean
  /** Null where it does not fit. */
  readonly check: VinCheck | null
  /** For the person; empty where nothing is odd. Never a reason to stop. */
  readonly hints: readonly string[]
}

/**
 * Hints about a VIN as typed: its characters and length, and the check digit of North American rules. Nothing
 * about maker, model or year is read out of it.
 *
 * @source ISO 3779 (characters); 49 CFR 565.15(c) (check digit)
 * @example vinHints('0000 0000 9b123 4567').vin // '000000009B1234567'
 * @example vinHints('000000000A0000O01').hints.length // 1
 */
export function vinHints(typed: string): VinHints {
  const vin = typed.replace(/[\s-]/g, '').toUpperCase()
  const hints: string[] = []
  if ([...vin].length !== 17)
    hints.push(`It has ${[...vin].length} characters; a VIN since 1981 has 17, an older one may differ.`)
  const odd = [...new Set([...vin].filter((c) => !/[0-9A-HJ-NPR-Z]/.test(c)))]
  if (odd.length > 0)
    hints.push(`${odd.map((c) => `“${c}”`).join(', ')} stands in no VIN; I, O and Q are left out of it.`)
  if (hints.length > 0) return { vin, fits: false, check: null, hints }
  const check = vinCheck(vin)
  return {
    vin,
    fits: true,
    check,
    hints: check.agrees
      ? []
      : [
          `By North American rules the ninth character would be ${check.digit}, not ${vin[8]}; read it again. Elsewhere the ninth place means nothing of the kind.`,
        ],
  }
}
