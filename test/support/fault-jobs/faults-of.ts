import { familyOf } from '../../../src/corner/index.ts'
import type { ExaminedWheel } from '../../../src/findings/index.ts'
import { type Fault, onAxle } from './fault.ts'
import { faultsOfCorner } from './faults-of-corner.ts'
import { faultsOfWholeAxle } from './faults-of-whole-axle.ts'
import { fileNamesOf } from './file-names.ts'
import { sides } from './true-axle.ts'
import { type TrueVehicle, wheels } from './true-vehicle.ts'
import { halfRange, inRange, knobsOf, settingOf } from './turn-knobs.ts'

/** Every single fault that a vehicle could have. */
export function faultsOf(vehicle: TrueVehicle): readonly Fault[] {
  const list: Fault[] = []
  for (const axle of vehicle.axles) {
    list.push(
      ...('layout' in axle.drawn
        ? faultsOfCorner(axle, fileNamesOf(familyOf(axle.corner.layout), axle.corner))
        : faultsOfWholeAxle(axle)),
    )
    for (const side of sides) {
      const wheel: ExaminedWheel = `${axle.end} ${side}`
      const spring = (kind: 'sagged spring' | 'bush clamped hanging', way: 1 | -1): Fault => ({
        suspect: { kind, axle: axle.end, side, at: null },
        apply: (v, size) => ({
          ...v,
          springs: { ...v.springs, [wheel]: v.springs[wheel] + way * size },
        }),
      })
      list.push(spring('sagged spring', 1))
      // rubber that is twisted at ride height holds the body up; a hinge of bonded rubber is needed for it
      const bonded = Object.values(axle.corner.joints).some((joint) => joint.bush?.bonded)
      if (bonded) list.push(spring('bush clamped hanging', -1))
    }
    for (const knob of knobsOf(axle)) {
      if (knob.adjuster.kind === 'wedge' || knob.adjuster.kind === 'offset sleeve') continue
      list.push(
        onAxle(
          axle,
          {
            kind: 'adjuster slipped or at its stop',
            side: knob.on === 'both' ? null : knob.on,
            at: knob.adjuster.id,
          },
          (state, _, luck) => {
            const by =
              luck.sign() *
              luck.between(0.4, 1) *
              halfRange(knob) *
              (knob.adjuster.kind === 'thread' ? 0.5 : 1)
            state.settings[knob.on][knob.adjuster.id] = inRange(knob, settingOf(state, knob) + by)
          },
        ),
      )
    }
  }
  list.push(...ofMeasuring())
  return list
}

function ofMeasuring(): Fault[] {
  const nowhere = { axle: null, side: null } as const
  return [
    { suspect: { kind: 'tyre pulls', axle: 'front', side: null, at: null }, apply: (vehicle) => vehicle },
    {
      suspect: { kind: 'gauge not zeroed', ...nowhere, at: 'camber gauge' },
      apply: (vehicle, size, luck) => ({
        ...vehicle,
        misread: { ...vehicle.misread, camber: vehicle.misread.camber + luck.sign() * size },
      }),
    },
    {
      suspect: { kind: 'gauge not zeroed', ...nowhere, at: 'steer gauge' },
      share: 0.5,
      // the plates' zero is coarser than the level's: three times the angle
      apply: (vehicle, size, luck) => ({
        ...vehicle,
        misread: { ...vehicle.misread, steer: vehicle.misread.steer + luck.sign() * 3 * size },
      }),
    },
    {
      suspect: { kind: 'floor not level', ...nowhere, at: null },
      apply: (vehicle, size, luck) => {
        const pads = { ...vehicle.misread.pads }
        const high = luck.oneOf([
          ['front left', 'rear left'],
          ['front right', 'rear right'],
          ['front left', 'front right'],
          ...wheels.map((wheel) => [wheel]),
        ] as ExaminedWheel[][])
        for (const wheel of high) pads[wheel] += size
        return { ...vehicle, misread: { ...vehicle.misread, pads } }
      },
    },
  ]
}
