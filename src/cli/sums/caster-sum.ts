import {
  type GaugeReading,
  type Inclinometer,
  type SteerGauge,
  type SweepReading,
  smallAngleCaster,
  sweepReading,
} from '../../gauge/index.ts'
import { propagate, rectangular } from '../../measure/index.ts'
import { formatAngle, metre, parseAngle, parseLength, rad } from '../../quantity/index.ts'
import { BadInput } from '../files/outcome.ts'
import { type Shown, shown } from './shown.ts'
import type { SumTopic } from './sum-answer.ts'
import { withinOf } from './within.ts'

const unit = { kind: 'angle', unit: '°', digits: 2 } as const
/** A difference that is felt as a pull. @source common practice, no source */
const felt = 0.5

/** Caster, and SAI where the gauge was read along the wheel too, from a steer sweep. */
export const casterSum: SumTopic = {
  name: 'caster',
  about: 'caster from a steer sweep, as many degrees to each side as you like',
  needs: ['side', 'left', 'right'],
  may: ['sai', 'within'],
  example: 'caster side=left left="20° 1.8°" right="20° -2.2°"',
  work: (words) => {
    const side = sideOf(words.get('side')!)
    const [left, right] = [ends(words, 'left'), ends(words, 'right')]
    if (left.length !== right.length)
      throw new BadInput([
        `There are ${left.length} readings to the left and ${right.length} to the right. A sweep needs one of each; give as many left as right.`,
      ])
    const sai = words.get('sai')
    const { of, told } = withinOf(words.get('within'), {
      reading: { of: 'each reading of the gauge on the wheel', usual: '0.1°', read: parseAngle },
      steer: { of: 'each reading of how far it was steered', usual: '1°', read: parseAngle },
      sai: {
        of: sai === undefined ? 'SAI, taken as 12°,' : 'SAI',
        usual: sai === undefined ? '5°' : '1°',
        by: sai === undefined ? 'from memory of ordinary cars' : 'common practice, no source',
        read: parseAngle,
      },
      floor: { of: 'the pad under each wheel: level', usual: '2 mm', read: parseLength },
    })
    const sweeps = left.map((place, i) => ({ left: place, right: right[i]! }))
    const leans = sai === undefined ? (Math.PI * 12) / 180 : parseAngle(sai, { at: 'sai' })
    if (Math.abs(leans) > Math.PI / 4)
      throw new BadInput([`sai is “${sai}”, and no steering axis leans beyond 45°. Read it again.`])
    const known = rectangular(of.sai, 'SAI', leans)
    const readings = sweepReading(
      { method: 'steer sweep', id: 'sum', side, gauge: 'gauge', steerGauge: 'plates', sweeps },
      {
        instruments: [gaugeOf(of.reading), platesOf(of.steer)],
        padsWithin: metre(of.floor),
        sai: { [side]: known },
      },
    )
    const withSai = readings.length > 1
    const [caster, inclination] = readings.map((reading) => shown(nameOf(reading), reading.measured, unit))
    const check = bySines(sweeps, { side, reading: of.reading, steer: of.steer })
    const cross = Math.SQRT2 * caster!.within
    return {
      answer: [
        `caster ${caster!.text} (95 % interval)`,
        ...(inclination ? [`SAI ${inclination.text} (95 % interval)`] : []),
        `cross-check: change of camber × ${check.factor.toFixed(3)} = ${check.caster.text}`,
      ],
      numbers: [
        caster!,
        ...(inclination ? [inclination] : []),
        check.caster,
        { name: 'sweep factor', value: check.factor, within: 0, unit: '1' },
      ],
      formula: `${readings.map(({ formula }) => formula).join('; ')}; cross-check: 1/(sin left + sin right)`,
      source:
        'rigid turn about the steering axis (method: SAE Technical Paper 850219, 1985); docs/methods/steer-sweep.md',
      spread: withSai ? told.filter((line) => !line.startsWith('SAI')) : told,
      notes: [
        ...(cross > felt
          ? [
              `Left minus right, both read like this, is within ± ${formatAngle(rad((cross * Math.PI) / 180), { unit: '°', spread: rad((cross * Math.PI) / 180) })}: half a degree, which is felt as a pull, cannot be decided with it.`,
            ]
          : []),
        'Pedal prop on the brake, wheels on free plates set to zero straight ahead, each end approached from one side. left="20° 1.8°" is steered 20° to the left, camber +1.8° there; a third angle is the gauge held along the wheel, + front end up, and gives SAI.',
        'This is the axis the wheel turned about; the axis through the joints may differ by a few tenths of a degree.',
      ],
    }
  },
}

const nameOf = ({ name }: GaugeReading): string => (name.endsWith('caster') ? 'caster' : 'SAI')

function sideOf(text: string): 'left' | 'right' {
  if (text === 'left' || text === 'right') return text
  throw new BadInput([`side is “${text}”. Write side=left or side=right: which wheel it is.`])
}

/** "20° 1.8°, 20.5° 1.75°": how far steered to that side, then the camber there, then the tilt where it was read. */
function ends(words: ReadonlyMap<string, string>, to: 'left' | 'right'): SweepReading[] {
  const places = words
    .get(to)!
    .split(/[;,](?!\d)/)
    .filter((part) => part.trim() !== '')
  return places.map((place) => {
    const [steer, camber, tilt, more] = place.trim().split(/\s+/)
    if (steer === undefined || camber === undefined || more !== undefined)
      throw new BadInput([
        `${to} has “${place.trim()}”. Write how far it was steered and the camber there, such as ${to}="20° 1.8°".`,
      ])
    const turned = parseAngle(steer, { at: to })
    if (to === 'left' && turned < 0)
      throw new BadInput([
        `left has “${place.trim()}”, steered by less than nothing. Write how far it was steered to the left.`,
      ])
    return {
      steer: rad(to === 'left' ? turned : -Math.abs(turned)),
      camber: parseAngle(camber, { at: to }),
      ...(tilt === undefined ? {} : { tilt: parseAngle(tilt, { at: to }) }),
    }
  })
}

/** All that a reading may be off by is new each time. */
const gaugeOf = (placing: number): Inclinometer => ({
  kind: 'inclinometer',
  id: 'gauge',
  name: 'gauge',
  resolution: rad(0),
  placing: rad(placing),
  accuracy: rad(0),
  zeroError: rad(0),
  zeroing: 'none',
})
const platesOf = (placing: number): SteerGauge => ({
  kind: 'turn plates',
  id: 'plates',
  name: 'plates',
  resolution: rad(0),
  placing: rad(placing),
  accuracy: 0,
  zeroError: rad(0),
})

/** The workshop's own way: change of camber times 1/(sin + sin), from the means of all sweeps. */
function bySines(
  sweeps: readonly { readonly left: SweepReading; readonly right: SweepReading }[],
  { side, reading, steer }: { side: 'left' | 'right'; reading: number; steer: number },
): { factor: number; caster: Shown } {
  const mean = (of: (sweep: (typeof sweeps)[number]) => number) =>
    sweeps.reduce((sum, sweep) => sum + of(sweep), 0) / sweeps.length
  const many = 1 / Math.sqrt(sweeps.length)
  const inputs = [
    rectangular(
      steer * many,
      'steer left',
      mean(({ left }) => left.steer),
    ),
    rectangular(
      reading * many,
      'camber left',
      mean(({ left }) => left.camber),
    ),
    rectangular(
      steer * many,
      'steer right',
      mean(({ right }) => right.steer),
    ),
    rectangular(
      reading * many,
      'camber right',
      mean(({ right }) => right.camber),
    ),
  ]
  const place = (turned: number, camber: number) => ({ steer: rad(turned), camber: rad(camber) })
  const caster = propagate(([a, g, b, h]) => smallAngleCaster(place(a!, g!), place(b!, h!), side), inputs)
  const one = smallAngleCaster(place(inputs[0]!.value, 1e-3), place(inputs[2]!.value, 0), side)
  return { factor: Math.abs(one) / 1e-3, caster: shown('caster by the factor', caster, unit) }
}
