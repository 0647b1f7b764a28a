/**
 * The speed in km/h that a tyre with this symbol may be driven at, when well and fully inflated.
 *
 * @returns null for a letter that is no symbol
 * @source from memory: ISO 4000-1 and UN R30, table of speed symbols; N to Y read in public copies
 * @example speedOfSymbol('S') // 180
 */
export function speedOfSymbol(symbol: string): number | null {
  return speeds.get(symbol) ?? null
}

const speeds: ReadonlyMap<string, number> = new Map([
  ['F', 80],
  ['G', 90],
  ['J', 100],
  ['K', 110],
  ['L', 120],
  ['M', 130],
  ['N', 140],
  ['P', 150],
  ['Q', 160],
  ['R', 170],
  ['S', 180],
  ['T', 190],
  ['U', 200],
  ['H', 210],
  ['V', 240],
  ['W', 270],
  ['Y', 300],
])
