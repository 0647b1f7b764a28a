import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { type Corner, readCorner } from '../../../src/corner/index.ts'

const root = fileURLToPath(new URL('../../../', import.meta.url))
const file = (path: string): unknown => JSON.parse(readFileSync(root + path, 'utf8'))
function corner(value: unknown): Corner {
  const read = readCorner(value)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}
const layout = (id: string) => corner(file(`src/corner/layouts/${id}.corner.json`))
/** The demo's bus with air in place of its coil. Invented. */
function onAir(): Corner {
  const value = file('examples/port-unit-07/front.corner.json') as {
    parts: Record<string, Record<string, unknown>>
    holds: Record<string, Record<string, unknown>>
  }
  value.parts['coil']!['stores'] = 'air'
  const { standInKinds: _, ...hold } = value.holds['coil']!
  value.holds['coil'] = { ...hold, letDown: 'air let out' }
  return corner({ ...value, airSprung: true })
}

/** The corner models that the broken orders are about. */
export const checkedCorners = {
  bus: corner(file('examples/port-unit-07/front.corner.json')),
  air: onAir(),
  torsionBar: layout('wishbone-torsion-bar'),
  strut: layout('strut-front'),
  boxed: layout('wishbone-coil-upper'),
  trailing: layout('semi-trailing-rear'),
} as const
