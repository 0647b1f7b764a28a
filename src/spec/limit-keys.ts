import { type AxleEnd, axleReadings, type ReadingName, type Side } from '../linkage/index.ts'

const ends: readonly AxleEnd[] = ['front', 'rear']
const sides: readonly Side[] = ['left', 'right']

/** What a wheel's limit in a spec sheet bounds. Front toe is to the thrust line, the way the wheels are set. */
function wheelReading(end: AxleEnd, side: Side, angle: string): ReadingName {
  return (
    end === 'front' && angle === 'toe' ? `front ${side} toe to thrust` : `${end} ${side} ${angle}`
  ) as ReadingName
}

/** Both wheels first, so that a later key for one side goes before it. */
function keys(): Map<string, readonly ReadingName[]> {
  const found = new Map<string, readonly ReadingName[]>()
  for (const end of ends) {
    const angles = end === 'front' ? ['camber', 'caster', 'sai', 'toe'] : ['camber', 'toe']
    for (const angle of angles) {
      found.set(
        `${end} ${angle}`,
        sides.map((side) => wheelReading(end, side, angle)),
      )
      for (const side of sides) found.set(`${end} ${side} ${angle}`, [wheelReading(end, side, angle)])
    }
  }
  for (const name of Object.keys(axleReadings) as ReadingName[])
    if (!name.endsWith('to thrust')) found.set(name, [name])
  return found
}

/**
 * The limits that a spec sheet may hold, and the readings that each bounds: "front camber" is for both
 * wheels, "front left camber" for one and goes before it, "front toe" is each wheel's to the thrust line.
 *
 * @source definition
 */
export const limitKeys: ReadonlyMap<string, readonly ReadingName[]> = keys()
