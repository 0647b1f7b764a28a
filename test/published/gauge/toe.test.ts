import {
  camberReading,
  floorCorrection,
  floorTilt,
  toeByStrings,
  totalToeByTape,
} from '../../../src/gauge/index.ts'
import { combine, exact, standardUncertainty } from '../../../src/measure/index.ts'
import { deg, inch, inDegrees, metre, mm, rad } from '../../../src/quantity/index.ts'
import { inclinometer, plain, rule, strings, tape } from '../../property/gauge/kit.ts'
import { published } from '../../support/published.ts'

const hubs = { 'front left': mm(90), 'front right': mm(90), 'rear left': mm(90), 'rear right': mm(90) }
const byStrings = (span: number, difference: number, placing = 0) =>
  toeByStrings(
    {
      method: 'strings and rule',
      id: 'toe',
      rule: 'rule',
      strings: 'strings',
      hubs,
      wheelbase: metre(2.5),
      wheels: { 'front left': { front: [metre(0.1 + difference)], rear: [metre(0.1)], span: metre(span) } },
    },
    plain({ instruments: [rule({ placing: metre(placing) }), strings()] }),
  )[0]!.measured
const TM = 'geometry; definition "toe-in = rear minus front" in US Army TM 5-3810-293'
// Lengths are printed to 1e-6 mm (1e-6 in): over the diameter that is below 1e-6°.
const within = 1e-6

published('GA2 toe of one wheel from a length', [
  {
    id: 'toe.length.read',
    got: inDegrees(byStrings(inch(24), inch(0.062832)).value),
    want: 0.15,
    within: 2e-6,
    source: 'a public web page restating the relation x = D sin(toe)',
  },
  {
    id: 'toe.length.400.0.1',
    got: inDegrees(byStrings(mm(400), mm(0.698131)).value),
    want: 0.1,
    within,
    source: TM,
  },
  {
    id: 'toe.length.381.0.2',
    got: inDegrees(byStrings(mm(381), mm(1.329938)).value),
    want: 0.2,
    within,
    source: TM,
  },
  {
    id: 'toe.length.406.4.0.05',
    got: inDegrees(byStrings(mm(406.4), mm(0.354651)).value),
    want: 0.05,
    within,
    source: TM,
  },
  {
    id: 'toe.length.650.0.25',
    got: inDegrees(byStrings(mm(650), mm(2.836151)).value),
    want: 0.25,
    within,
    source: TM,
  },
])

const byTape = (rearMinusFront: number, { below, radius }: { below: number; radius: number }, placing = 0) =>
  totalToeByTape(
    {
      method: 'tape on a scribed line',
      id: 'tape',
      axle: 'front',
      tape: 'tape',
      front: [metre(1.4)],
      rear: [metre(1.4 + rearMinusFront)],
      belowHub: metre(below),
      levelled: metre(0),
      radius: metre(radius),
    },
    plain({ instruments: [tape({ placing: metre(placing) })] }),
  )
const table = 'trade table of this project (reading errors as boxes, result two standard deviations)'
const twice = (u: number) => 2 * inDegrees(u)
const camber = (turns: readonly number[]) =>
  camberReading(
    {
      method: 'inclinometer',
      id: 'camber',
      wheel: 'front left',
      gauge: 'level',
      readings: turns.map((turn) => ({ wheelTurn: deg(turn), reading: rad(0) })),
    },
    plain({ instruments: [inclinometer({ placing: deg(0.1) })] }),
  ).measured
// 0.16° between points held 200 mm above the ground on wheels of 370 mm: what the full diameter would make of it.
const low = byTape(2 * Math.sqrt(0.37 ** 2 - 0.17 ** 2) * Math.sin(deg(0.16)), { below: 0.17, radius: 0.37 })
const tilted = floorTilt(
  plain({
    floor: {
      id: 'bay',
      name: 'bay',
      found: 'with a level',
      heights: { 'front left': mm(5), 'front right': mm(0), 'rear left': mm(0), 'rear right': mm(0) },
      spread: { 'front left': mm(0), 'front right': mm(0), 'rear left': mm(0), 'rear right': mm(0) },
    },
  }),
)
const corrected = (side: 'left' | 'right') =>
  floorCorrection(exact(0), { angle: 'camber', axle: 'front', side }, tilted).measured

published('GA6 what simple gauges can tell', [
  {
    id: 'inclinometer.one',
    got: twice(standardUncertainty(camber([0]))),
    want: 0.12,
    within: 0.005,
    source: table,
    basis: 'derived',
  },
  {
    id: 'inclinometer.two',
    got: twice(standardUncertainty(camber([0, 180]))),
    want: 0.08,
    within: 0.005,
    source: table,
    basis: 'derived',
  },
  {
    id: 'strings',
    got: twice(standardUncertainty(byStrings(mm(432), 0, mm(0.5)))),
    want: 0.11,
    within: 0.005,
    source: table,
    basis: 'derived',
  },
  {
    id: 'tape',
    got: twice(standardUncertainty(byTape(0, { below: 0, radius: 0.325 }, 0.001).measured)),
    want: 0.14,
    within: 0.005,
    source: table,
    basis: 'derived',
  },
  {
    id: 'tape.low.exact',
    got: inDegrees(low.measured.value),
    want: 0.16,
    within: 1e-6,
    source: table,
    basis: 'derived',
  },
  {
    id: 'tape.low.diameter',
    got: inDegrees(low.measured.value - low.corrections[0]!.by),
    want: 0.142,
    within: 0.0005,
    source: table,
    basis: 'derived',
  },
  {
    id: 'floor.5mm',
    want: 0.38,
    within: 0.005,
    source: table,
    basis: 'derived',
    got: inDegrees(
      combine([
        { of: corrected('left'), times: 1 },
        { of: corrected('right'), times: -1 },
      ]).value,
    ),
  },
])
