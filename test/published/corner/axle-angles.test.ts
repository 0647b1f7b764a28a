import { readFileSync } from 'node:fs'
import { readCorner, wholeAxlePoints } from '../../../src/corner/index.ts'
import { axlePoseAt, type SolidAxlePoints, solidAxle } from '../../../src/linkage/index.ts'
import { inDegrees, inMillimetres, metre, rad } from '../../../src/quantity/index.ts'
import { published } from '../../support/published.ts'

const file = new URL('../../../examples/port-unit-03/front.corner.json', import.meta.url)
const read = readCorner(JSON.parse(readFileSync(file, 'utf8')))
if (!read.ok) throw new Error(JSON.stringify(read.problems))
const pose = axlePoseAt(solidAxle(wholeAxlePoints(read.value) as SolidAxlePoints), {
  heave: metre(0),
  roll: rad(0),
  drop: rad(0),
})

// Kingpin of the file, mm: (5, 735, 250) to (−5, 711.5, 440); ground at z = 0, wheel centre at y = 820, z = 342.
const lean = Math.atan(23.5 / 190) * (180 / Math.PI)
const rake = Math.atan(10 / 190) * (180 / Math.PI)
const meets = { x: 5 + (10 * 250) / 190, y: 735 + (23.5 * 250) / 190 }
const camber = (0.75 * Math.PI) / 180
const toe = (0.06 * Math.PI) / 180

published(
  'CO11 the angles of the tipper’s axle are those that the standard’s definitions give for its points',
  (['left', 'right'] as const).flatMap((side) => {
    const wheel = pose[side]
    const shared = { within: 1e-6, basis: 'derived' as const }
    return [
      {
        id: `${side} caster`,
        got: inDegrees(wheel.caster!),
        want: rake,
        source: 'ISO 8855, castor angle: steering axis against the vertical, seen from the side',
        ...shared,
      },
      {
        id: `${side} kingpin inclination`,
        got: inDegrees(wheel.sai!),
        want: lean,
        source: 'ISO 8855, steering-axis inclination: the same seen from the front',
        ...shared,
      },
      {
        id: `${side} castor trail, mm`,
        got: inMillimetres(wheel.trail!),
        want: meets.x,
        source: 'ISO 8855, castor trail: contact point behind where the steering axis meets the ground',
        // The contact point lies under the hub but for toe and camber together: r sin camber sin toe = 0.005 mm.
        within: 0.006,
        basis: 'derived' as const,
      },
      {
        id: `${side} steering-axis offset at the ground, mm`,
        got: inMillimetres(wheel.scrub!),
        // The wheel leans out by its camber: its foot stands in by r · tan camber · cos toe.
        want: 820 - 342 * Math.sin(camber) * Math.cos(toe) - meets.y,
        source: 'ISO 8855, steering-axis offset at ground: contact point outside of where the axis meets it',
        within: 0.006,
        basis: 'derived' as const,
      },
    ]
  }),
)
