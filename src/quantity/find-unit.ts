import { type Kind, type Unit, units } from './units.ts'

/** Factors joined by "·", no full stop at the end: "lbf - ft." becomes "lbf·ft". A sign at the end stays. */
const joined = (text: string) =>
  text
    .trim()
    .replace(/\.$/, '')
    .replace(/ ?[·\-.] ?(?=.)| /g, '·')

const index = new Map<Kind, Map<string, Unit>>()
for (const [kind, list] of Object.entries(units) as [Kind, readonly Unit[]][]) {
  const byName = new Map<string, Unit>()
  for (const unit of list)
    for (const name of [unit.exactCase ? unit.symbol : unit.symbol.toLowerCase(), ...unit.names])
      byName.set(name.replace(/-/g, '·'), unit)
  index.set(kind, byName)
}

/** The unit of this kind that the (plain) text names, or undefined. */
export function findUnit(text: string, kind: Kind): Unit | undefined {
  const name = joined(text)
  const byName = index.get(kind)
  return byName?.get(name) ?? byName?.get(name.toLowerCase())
}

/** The kind that knows this unit, other than the one asked for. */
export function kindOfUnit(text: string): Kind | undefined {
  for (const kind of Object.keys(units) as Kind[]) if (findUnit(text, kind)) return kind
  return undefined
}
