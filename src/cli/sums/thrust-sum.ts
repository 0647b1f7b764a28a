import { steeringWheelOff } from '../../linkage/index.ts'
import { propagate, rectangular } from '../../measure/index.ts'
import { parseAngle, rad } from '../../quantity/index.ts'
import { shown } from './shown.ts'
import { ratioOf, ratioWithin, sidedAngle, sizeOf, toSide } from './steering-words.ts'
import type { SumTopic } from './sum-answer.ts'
import { withinOf } from './within.ts'

const none = { left: rad(0), right: rad(0) }

/** Where a thrust angle makes the steering wheel stand. */
export const thrustSum: SumTopic = {
  name: 'thrust',
  about: 'how far a thrust angle turns the steering wheel',
  needs: ['angle', 'ratio'],
  may: ['within'],
  example: 'thrust angle="0.25° right" ratio=16',
  work: (words) => {
    // the thrust line's own sign: + to the right
    const thrust = -sidedAngle(words.get('angle')!, 'angle')
    const ratio = ratioOf(words.get('ratio')!)
    const { of, told } = withinOf(words.get('within'), {
      angle: { of: 'the thrust angle', usual: '0.1°', read: parseAngle },
      ratio: ratioWithin,
    })
    const side = steeringWheelOff({ toes: none, thrust: rad(thrust) }, ratio)
    const off = shown(
      'steering wheel',
      sizeOf(
        propagate(
          ([t, r]) => steeringWheelOff({ toes: none, thrust: rad(t!) }, r!),
          [rectangular(of.angle, 'thrust', thrust), rectangular(of.ratio * ratio, 'ratio', ratio)],
        ),
      ),
      { kind: 'angle', unit: '°', digits: 1 },
    )
    return {
      answer: [
        `the steering wheel stands ${off.text} ${toSide(side)} (95 % interval) when the vehicle runs straight`,
      ],
      numbers: [off],
      formula: 'steering wheel = thrust · ratio, front toe shared equally about the centre line',
      source: 'own derivation: docs/methods/steering.md',
      spread: told,
      notes: [
        'Thrust to the right: the rear axle’s mean line points to the right of the centre line.',
        'Rear toe first; front toe is then set to the thrust line, with the steering wheel held.',
      ],
    }
  },
}
