import { type Displacement, type Side, sumOfDisplacements } from '../linkage/index.ts'
import type { RankedSuspect } from './findings.ts'
import type { Hypothesis } from './hypothesis.ts'
import { scaledDisplacement } from './scaled-displacement.ts'
import type { VehicleWay } from './vehicle-way.ts'

/** What a hypothesis at its best size does to the points of the corners it is at. @source definition */
export function ghostOf({ family, size, beside }: Hypothesis): RankedSuspect['ghost'] {
  const { axle } = family.suspect
  if (axle === null) return { left: null, right: null }
  const of = (side: Side): Displacement | null => {
    const part = (way: VehicleWay, k: number): Displacement[] => {
      const own = way.axles?.[axle]?.[side]
      return own ? [scaledDisplacement(own, k)] : []
    }
    const all = [...part(family.main, size), ...family.also.flatMap(({ way }, i) => part(way, beside[i]!))]
    return all.length > 0 ? sumOfDisplacements(all) : null
  }
  return { left: of('left'), right: of('right') }
}
