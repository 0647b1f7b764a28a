import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { type Corner, readCorner, startingLayout, startingLayouts } from '../../../src/corner/index.ts'
import { type Kit, readKit } from '../../../src/kit/index.ts'
import { type Assembly, assemblyOf, type Goal } from '../../../src/plan/index.ts'

const examples = fileURLToPath(new URL('../../../examples/', import.meta.url))
const json = (path: string): unknown => JSON.parse(readFileSync(examples + path, 'utf8'))

function corner(file: unknown): Corner {
  const read = readCorner(file)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}

/** The demo's front axles. */
export const bus = corner(json('port-unit-07/front.corner.json'))
export const van = corner(json('port-unit-12/front.corner.json'))

/** The demo's vehicles, front and rear. */
const busRear = corner(json('port-unit-07/rear.corner.json'))
const vanRear = corner(json('port-unit-12/rear.corner.json'))
export const wholeBus = assemblyOf([bus, busRear])
export const wholeVan = assemblyOf([van, vanRear])
export const tipper = assemblyOf([corner(json('port-unit-03/front.corner.json'))])

/** The demo's kit. */
export function kit(): Kit {
  const read = readKit(json('port-kit.kit.json'))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}

interface Vehicle {
  readonly name: string
  readonly corner: Corner
  readonly assembly: Assembly
}
const vehicle = (name: string, corner: Corner): Vehicle => ({ name, corner, assembly: assemblyOf([corner]) })

/** Every starting layout and the demo's axles, by name. */
export const vehicles: readonly Vehicle[] = [
  ...(await Promise.all(
    startingLayouts.map(async ({ id }) => vehicle(id, corner(await startingLayout(id)))),
  )),
  vehicle('bus', bus),
  vehicle('van', van),
]

/** The demo's rear axles. */
export const rears: readonly Vehicle[] = [vehicle('bus, rear', busRear), vehicle('van, rear', vanRear)]

/** One goal for each part that wears: the left one where there are two. */
export const wearing = (assembly: Assembly): readonly Goal[] =>
  Object.values(assembly.parts)
    .filter(({ file, side }) => (file.wears ?? []).length > 0 && side !== 'right')
    .map(({ id }) => ({ replace: [id] }))

export const vehicleNamed = (name: string): Assembly => {
  const found = vehicles.find((one) => one.name === name)
  if (!found) throw new Error(`${name}: ${vehicles.map((one) => one.name).join(', ')}`)
  return found.assembly
}
