import { type DialIndicator, runOutFit, runOutReading } from '../../gauge/index.ts'
import { propagate } from '../../measure/index.ts'
import {
  formatAngle,
  formatLength,
  inDegrees,
  inMillimetres,
  metre,
  parseAngle,
  parseLength,
} from '../../quantity/index.ts'
import { BadInput } from '../files/outcome.ts'
import { shown } from './shown.ts'
import type { SumTopic } from './sum-answer.ts'
import { withinOf } from './within.ts'

const perWheel = 3

/** Run-out of a rim: a sine fitted to readings around the wheel. */
export const runOutSum: SumTopic = {
  name: 'run-out',
  about: 'run-out of a rim from three places of the wheel or more, as a length and as an angle',
  needs: ['readings', 'diameter'],
  may: ['within'],
  example: 'run-out readings="0°: 0.12 mm, 90°: -0.21 mm, 180°: 0.05 mm, 270°: 0.43 mm" diameter="402 mm"',
  work: (words) => {
    const diameter = parseLength(words.get('diameter')!, { at: 'diameter' })
    const readings = around(words.get('readings')!)
    const { of, told } = withinOf(words.get('within'), {
      reading: { of: 'each reading of the dial', usual: '0.03 mm', read: parseLength },
    })
    const fit = runOutFit(readings)
    const { measured, notes } = runOutReading(
      { method: 'run-out', id: 'sum', wheel: 'front left', gauge: 'dial', readings, diameter },
      { instruments: [dialOf(of.reading)] },
    )
    const total = shown(
      'total',
      propagate(([swing]) => 2 * diameter * Math.tan(swing! / 2), [measured]),
      { kind: 'length', unit: 'mm', digits: 2 },
    )
    const angle = shown('angle', measured, { kind: 'angle', unit: '°', digits: 3 })
    const { squares, dof } = fit.residual
    const left = metre(Math.sqrt(squares / Math.max(1, dof)))
    return {
      answer: [
        `total run-out ${total.text} (95 % interval), highest at ${formatAngle(fit.phase, { unit: '°', digits: 0 })} of the wheel`,
        `as an angle ${angle.text}: camber and toe swing by half of it to each side`,
        dof === 0
          ? 'three readings always lie on a sine, so nothing is left to judge it by; a fourth place would'
          : `the readings lie off the sine by ${formatLength(left, { unit: 'mm', digits: 3 })} (standard deviation, ${dof} to spare)`,
      ],
      numbers: [
        total,
        angle,
        { name: 'highest at', value: inDegrees(fit.phase), within: 0, unit: '°' },
        { name: 'left of the sine', value: inMillimetres(left), within: 0, unit: 'mm' },
      ],
      formula:
        'reading = mean + a·cos θ + b·sin θ by least squares; total = 2·√(a² + b²); angle = 2·atan(√(a² + b²)/diameter), about total/diameter',
      source: 'first harmonic by least squares (as in the summary of SAE J2133); docs/methods/run-out.md',
      spread: told,
      notes: [
        ...notes.map((note) => note.replaceAll('front left run-out, sum', 'the dial')),
        ...(total.value < total.within
          ? ['As far as this dial can tell the rim may run true: noise alone shows a run-out too.']
          : []),
        'Two readings half a turn apart cancel it; a gauge on the rim read at one place carries it whole.',
      ],
    }
  },
}

/** "0°: 0.12 mm, 120°: -0.31 mm" */
function around(text: string) {
  const parts = text
    .split(/[;,](?!\d)/)
    .map((part) => part.trim())
    .filter(Boolean)
  const readings = parts.map((part) => {
    const [turn, reading, more] = part.split(':').map((half) => half.trim())
    if (turn === undefined || reading === undefined || more !== undefined)
      throw new BadInput([
        `readings has “${part}”. Write how far the wheel was turned and what the dial showed, such as "90°: -0.2 mm".`,
      ])
    return {
      wheelTurn: parseAngle(turn, { at: 'readings' }),
      reading: parseLength(reading, { at: 'readings' }),
    }
  })
  if (readings.length < perWheel)
    throw new BadInput([
      `${readings.length === 0 ? 'No place' : readings.length === 1 ? 'One place' : 'Two places'} of the wheel cannot show a run-out. Read at three or more, evenly around.`,
    ])
  return readings
}

const dialOf = (placing: number): DialIndicator => ({
  kind: 'dial indicator',
  id: 'dial',
  name: 'dial',
  resolution: metre(0),
  placing: metre(placing),
  accuracy: metre(0),
})
