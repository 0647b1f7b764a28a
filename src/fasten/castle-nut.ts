import { inMillimetres, type Metre, mm } from '../quantity/index.ts'
import type { Thread } from './thread.ts'

/** A slotted or castle nut and its pin. @source definition */
export interface CastleNut {
  readonly slots: number
  /** Least width of a slot. */
  readonly slotWidth: Metre
  readonly acrossFlats: Metre
  readonly pin: { readonly diameter: Metre; readonly length: Metre }
  /** The slots stand in a crown of smaller diameter. */
  readonly crown: boolean
}

// Data. Diameter; slot width, across flats, pin diameter and length in mm; crown: DIN 935-1 (grades A and B), dimension
// table and column "Split pin as in DIN EN ISO 1234", read in a public copy. Slots: DIN 937, note under the table: 6 up to M39.
const rows: readonly (readonly [number, number, number, number, number, boolean])[] = [
  [6, 2, 10, 1.6, 14, false],
  [8, 2.5, 13, 2, 16, false],
  [10, 2.8, 16, 2.5, 20, false],
  [12, 3.5, 18, 3.2, 22, true],
  [14, 3.5, 21, 3.2, 25, true],
  [16, 4.5, 24, 4, 28, true],
  [18, 4.5, 27, 4, 32, true],
  [20, 4.5, 30, 4, 36, true],
  [22, 5.5, 34, 5, 36, true],
]
const SLOTS = 6

/**
 * The standard castle nut of a metric thread, M6–M22; null where the table has none. A joint's own nut may differ:
 * its slots are counted.
 *
 * @source DIN 935-1, dimension table; DIN 937, note under the table (6 slots)
 * @example castleNut(parseThread('M12x1.25')).pin.diameter // 0.0032
 */
export function castleNut({ system, diameter }: Thread): CastleNut | null {
  const row = rows.find(([d]) => system === 'metric' && d === Math.round(inMillimetres(diameter)))
  if (!row) return null
  const [, slot, flats, pin, length, crown] = row
  return {
    slots: SLOTS,
    slotWidth: mm(slot),
    acrossFlats: mm(flats),
    pin: { diameter: mm(pin), length: mm(length) },
    crown,
  }
}
