import { combine, exact, type Measured, propagate, rectangular } from '../measure/index.ts'
import { rad } from '../quantity/index.ts'
import { axisFromSweep } from './axis-from-sweep.ts'
import { floorCorrection } from './floor-correction.ts'
import { floorTilt } from './floor-tilt.ts'
import type { GaugeContext } from './gauge-context.ts'
import type { Correction, GaugeReading } from './gauge-reading.ts'
import { gaugeRefusal } from './gauge-refusal.ts'
import { instrumentOf } from './instrument-of.ts'
import type { Inclinometer, SteerGauge } from './instruments.ts'
import { meanReading, STEER } from './mean-reading.ts'
import type { SweepObservation, SweepReading } from './observation.ts'
import { sourceName } from './source-name.ts'
import { sweepThroughLinkage } from './sweep-through-linkage.ts'
import { wheelTilt } from './wheel-tilt.ts'
import { withoutZero } from './without-zero.ts'

const PAGE = 'docs/methods/steer-sweep.md'
const USUAL_SAI = { value: 0.21, halfWidth: 0.087 }
const LINKAGE_WITHIN = 0.5

/**
 * Caster, and SAI where the gauge was read along the wheel too, of one front wheel from a steer sweep. Exact
 * relation at any pair of angles; a zero of the steer gauge that is off straight ahead is one error of both sides.
 *
 * @throws {Refusal} `not-with-this-kit` without a steer gauge; `no-instrument`; `wrong-instrument`; `too-few`; `no-sweep`; `not-finite`; `not-level`; `no-floor-size`
 * @assumes brake held, each end approached from one side, wheels on free plates
 * @source own derivation: docs/methods/steer-sweep.md; SAE Technical Paper 850219 (1985) for the method
 */
export function sweepReading(observation: SweepObservation, context: GaugeContext): readonly GaugeReading[] {
  const { side, sweeps } = observation
  const gauge = instrumentOf(context.instruments, observation.gauge, ['inclinometer'])
  const steer = steerGaugeOf(observation, context)
  if (sweeps.length === 0)
    throw gaugeRefusal('too-few', 'sweeps', 0, 'No sweep was read.', 'Turn to both sides and read at each.')
  for (const { left, right } of sweeps) endsInOrder(left.steer, right.steer)
  const withSai = sweeps.every(({ left, right }) => left.tilt !== undefined && right.tilt !== undefined)
  const known = withSai ? undefined : (context.sai?.[side] ?? usualSai(side))
  const single = sweeps.map((sweep, i) =>
    angles(
      inputsOf(sweep, { gauge, steer, what: `${side} sweep, ${observation.id}, ${i + 1}`, side, context }),
      { side, known },
    ),
  )
  const tilt = floorTilt(context)
  const finish = (angle: 'caster' | 'sai'): GaugeReading => {
    const mean = combine(single.map((one) => ({ of: one[angle], times: 1 / single.length })))
    const floor = floorCorrection(mean, { angle, axle: 'front', side }, tilt)
    const joint = jointAxis(observation, context, angle)
    return {
      name: `front ${side} ${angle}`,
      measured: combine([
        { of: floor.measured, times: 1 },
        { of: joint.offset, times: 1 },
      ]),
      corrections: [floor.correction, ...joint.corrections],
      notes: [
        ...(angle === 'caster' && !withSai && !context.sai?.[side]
          ? ['SAI was not read; 12° ± 5° is assumed, which matters only where the sweep was uneven.']
          : []),
        ...joint.notes,
        ...tilt.notes,
      ],
      formula:
        angle === 'caster'
          ? 'tan c = [sin g1 − sin g2 + tan K (cos p1 cos g1 − cos p2 cos g2)]/(sin p1 cos g1 − sin p2 cos g2) − floor pitch'
          : 'tan K = [sin f1 − sin f2 − tan c (cos f1 cos q1 − cos f2 cos q2)]/(cos f1 sin q1 − cos f2 sin q2) ∓ floor roll',
      source: PAGE,
    }
  }
  return withSai ? [finish('caster'), finish('sai')] : [finish('caster')]
}

/** Ends that changed places would turn the sign of caster. */
function endsInOrder(left: number, right: number): void {
  if (!(left < right)) return
  const said = (steer: number) => `${((steer * 180) / Math.PI).toFixed(1).replace('-', '−')}°`
  throw gaugeRefusal(
    'no-sweep',
    'sweeps',
    `${left}, ${right}`,
    `The end to the left is steered by ${said(left)} and the end to the right by ${said(right)}, which is further to the left.`,
    'Steer to the left is plus: correct the signs, or change the ends over.',
  )
}

function steerGaugeOf({ steerGauge }: SweepObservation, { instruments }: GaugeContext): SteerGauge {
  if (steerGauge === undefined)
    throw gaugeRefusal(
      'not-with-this-kit',
      'steerGauge',
      '',
      'Caster cannot be measured with this kit: nothing tells how far the wheel was turned.',
      'Use turn plates, or a string and protractor on the floor.',
    )
  return instrumentOf(instruments, steerGauge, ['turn plates', 'string and protractor'])
}

const usualSai = (side: string): Measured =>
  rectangular(USUAL_SAI.halfWidth, sourceName('assumed', `${side} SAI`), USUAL_SAI.value)

interface Inputs {
  readonly steer: readonly [Measured, Measured]
  readonly camber: readonly [Measured, Measured]
  readonly tilt: readonly [Measured, Measured] | null
}

/** The six readings of one sweep with their errors. The scale errs by itself at each far angle; zeros are common. */
function inputsOf(
  sweep: { readonly left: SweepReading; readonly right: SweepReading },
  {
    gauge,
    steer,
    what,
    side,
    context,
  }: { gauge: Inclinometer; steer: SteerGauge; what: string; side: string; context: GaugeContext },
): Inputs {
  const end = (name: 'left' | 'right') => {
    const { steer: turned, camber, tilt } = sweep[name]
    const inclined = (value: number, of: string) =>
      withoutZero(
        combine([
          {
            of: meanReading([wheelTilt(value, `${of}, ${name}, ${what}`)], gauge, `${of}, ${name}, ${what}`)
              .measured,
            times: 1,
          },
          {
            of: rectangular(gauge.accuracy, sourceName('scale', `${gauge.id}, ${side} ${of}, ${name}`)),
            times: 1,
          },
        ]),
        gauge,
        context,
      ).measured
    return {
      steer: combine([
        { of: meanReading([turned], steer, `${name}, ${what}`, { kinds: STEER }).measured, times: 1 },
        { of: rectangular(steer.accuracy, sourceName('steer scale', steer.id)), times: turned },
        { of: rectangular(steer.zeroError, sourceName('steer zero', steer.id)), times: 1 },
      ]),
      camber: inclined(camber, 'camber'),
      tilt: tilt === undefined ? null : inclined(tilt, 'tilt'),
    }
  }
  const [left, right] = [end('left'), end('right')]
  return {
    steer: [left.steer, right.steer],
    camber: [left.camber, right.camber],
    tilt: left.tilt && right.tilt ? [left.tilt, right.tilt] : null,
  }
}

/** Both angles with the errors of all readings carried through the exact relation. */
function angles(
  { steer, camber, tilt }: Inputs,
  { side, known }: { side: 'left' | 'right'; known: Measured | undefined },
): { caster: Measured; sai: Measured } {
  const inputs = [...steer, ...camber, ...(known ? [known] : (tilt ?? []))]
  const axis = (x: readonly number[]) => {
    const place = (i: 0 | 1): SweepReading => ({
      steer: rad(x[i]!),
      camber: rad(x[2 + i]!),
      ...(known ? {} : { tilt: rad(x[4 + i]!) }),
    })
    return axisFromSweep([place(0), place(1)], known ? { side, sai: x[4]! } : { side })
  }
  return {
    caster: propagate((x) => axis(x).caster, inputs),
    sai: known ?? propagate((x) => axis(x).sai, inputs),
  }
}

/** From what the sweep sees to the axis through the joints, where a corner model is given. */
function jointAxis(
  { side, sweeps }: SweepObservation,
  { linkage, linkageWithin = LINKAGE_WITHIN }: GaugeContext,
  angle: 'caster' | 'sai',
): { offset: Measured; corrections: readonly Correction[]; notes: readonly string[] } {
  const model = linkage?.[side]
  if (!model)
    return {
      offset: exact(0),
      corrections: [],
      notes: [
        'Without a corner model this is the axis the wheel turned about; the axis through the joints may differ by a few tenths of a degree.',
      ],
    }
  const mean = (end: 'left' | 'right') =>
    sweeps.reduce((sum, sweep) => sum + sweep[end].steer, 0) / sweeps.length
  const turns =
    side === 'left'
      ? ([rad(mean('left')), rad(mean('right'))] as const)
      : ([rad(-mean('right')), rad(-mean('left'))] as const)
  const { offset } = sweepThroughLinkage(model, turns)
  if (!offset)
    return {
      offset: exact(0),
      corrections: [],
      notes: ['A five-link has no joint axis; this is the axis the wheel turned about.'],
    }
  const by = offset[angle]
  return {
    offset: rectangular(
      Math.abs(by) * linkageWithin,
      sourceName('linkage', `front ${angle} of the sweep`),
      by,
    ),
    corrections: [{ name: 'linkage', by }],
    notes: [],
  }
}
