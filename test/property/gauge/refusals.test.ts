import {
  atHeight,
  axisFromSweep,
  bestImprovement,
  type FloorMap,
  floorByTurning,
  floorTilt,
  type Observation,
  readingOf,
  runOutFit,
  smallAngleCaster,
  sweepThroughLinkage,
  zeroByReversal,
} from '../../../src/gauge/index.ts'
import { mechanism, type Point } from '../../../src/linkage/index.ts'
import { exact, normal } from '../../../src/measure/index.ts'
import { deg, metre, mm, rad } from '../../../src/quantity/index.ts'
import { refuses } from '../../support/law.ts'
import { inclinometer, plain } from './kit.ts'

const read = (observation: Observation, context = plain({})) => readingOf(observation, context)
const camber: Observation & { method: 'inclinometer' } = {
  method: 'inclinometer',
  id: 'a',
  wheel: 'front left',
  gauge: 'level',
  readings: [{ wheelTurn: rad(0), reading: rad(0) }],
}
const strung: Observation & { method: 'strings and rule' } = {
  method: 'strings and rule',
  id: 'a',
  rule: 'rule',
  strings: 'strings',
  wheelbase: metre(2.5),
  wheels: { 'front left': { front: [mm(100)], rear: [mm(100)], span: mm(400) } },
  hubs: { 'front left': mm(90), 'front right': mm(90), 'rear left': mm(90), 'rear right': mm(90) },
}
const taped: Observation & { method: 'tape on a scribed line' } = {
  method: 'tape on a scribed line',
  id: 'a',
  axle: 'front',
  tape: 'tape',
  front: [metre(1.5)],
  rear: [metre(1.5)],
  belowHub: metre(0.1),
  levelled: mm(5),
  radius: metre(0.33),
}
const swept: Observation & { method: 'steer sweep' } = {
  method: 'steer sweep',
  id: 'a',
  side: 'left',
  gauge: 'level',
  steerGauge: 'plates',
  sweeps: [{ left: { steer: deg(20), camber: deg(1) }, right: { steer: deg(-20), camber: deg(-1) } }],
}
const ran: Observation & { method: 'run-out' } = {
  method: 'run-out',
  id: 'a',
  wheel: 'front left',
  gauge: 'dial',
  diameter: mm(400),
  readings: [0, 120, 240].map((t) => ({ wheelTurn: deg(t), reading: mm(1) })),
}
const tall: Observation & { method: 'ride height by rule' } = {
  method: 'ride height by rule',
  id: 'a',
  wheel: 'front left',
  rule: 'rule',
  readings: [mm(440)],
}
const loose: Observation & { method: 'dial indicator' } = {
  method: 'dial indicator',
  id: 'a',
  wheel: 'front left',
  gauge: 'dial',
  moves: 'camber',
  swings: [mm(1)],
  arm: mm(200),
}
const unread = Number.NaN

refuses('not-with-this-kit', () => read({ ...swept, steerGauge: undefined }), 'steerGauge')

refuses('no-instrument', () => read({ ...camber, gauge: 'lost' }), 'lost')
refuses('no-instrument', () => read({ ...strung, rule: 'lost' }), 'lost')
refuses('no-instrument', () => read({ ...taped, tape: 'lost' }), 'lost')
refuses('no-instrument', () => read({ ...swept, steerGauge: 'lost' }), 'lost')
refuses('no-instrument', () => read({ ...ran, gauge: 'lost' }), 'lost')
refuses('no-instrument', () => read({ ...tall, rule: 'lost' }), 'lost')
refuses('no-instrument', () => read({ ...loose, gauge: 'lost' }), 'lost')

refuses('wrong-instrument', () => read({ ...camber, gauge: 'rule' }), 'rule')
refuses('wrong-instrument', () => read({ ...strung, strings: 'rule' }), 'rule')
refuses('wrong-instrument', () => read({ ...taped, tape: 'rule' }), 'rule')
refuses('wrong-instrument', () => read({ ...swept, steerGauge: 'level' }), 'level')
refuses('wrong-instrument', () => read({ ...ran, gauge: 'rule' }), 'rule')
refuses('wrong-instrument', () => read({ ...tall, rule: 'tape' }), 'tape')
refuses('wrong-instrument', () => read({ ...loose, gauge: 'rule' }), 'rule')

refuses('too-few', () => read({ ...camber, readings: [] }))
refuses('too-few', () => read({ ...strung, wheels: {} }), 'wheels')
refuses('too-few', () =>
  read({ ...strung, wheels: { 'front left': { front: [], rear: [mm(100)], span: mm(400) } } }),
)
refuses('too-few', () => read({ ...taped, rear: [] }))
refuses('too-few', () => read({ ...swept, sweeps: [] }), 'sweeps')
refuses('too-few', () => read({ ...ran, readings: ran.readings.slice(0, 2) }))
refuses('too-few', () => read({ ...tall, readings: [] }))
refuses('too-few', () => read({ ...loose, swings: [] }))
refuses('too-few', () => runOutFit([0, 0, 360].map((t) => ({ wheelTurn: deg(t), reading: 1 }))))
refuses('too-few', () => zeroByReversal({ one: [], other: [0] }, inclinometer(), 'a'))
refuses('too-few', () => axisFromSweep([swept.sweeps[0]!.left, swept.sweeps[0]!.right], { side: 'left' }))

refuses('not-finite', () => read({ ...camber, readings: [{ wheelTurn: rad(0), reading: rad(unread) }] }))
refuses('not-finite', () => read({ ...camber, readings: [{ wheelTurn: rad(unread), reading: rad(0) }] }))
refuses('not-finite', () => read({ ...strung, hubs: { ...strung.hubs, 'rear left': metre(unread) } }))
refuses('not-finite', () => read({ ...taped, belowHub: metre(unread) }), 'belowHub')
refuses('not-finite', () => read({ ...taped, levelled: metre(Number.POSITIVE_INFINITY) }), 'levelled')
refuses('not-finite', () =>
  read({ ...swept, sweeps: [{ ...swept.sweeps[0]!, left: { steer: rad(unread), camber: rad(0) } }] }),
)
refuses('not-finite', () =>
  read({ ...ran, readings: [...ran.readings, { wheelTurn: rad(1), reading: metre(unread) }] }),
)
refuses('not-finite', () => read({ ...tall, readings: [metre(unread)] }))
refuses('not-finite', () => read({ ...loose, swings: [metre(unread)] }))
refuses('not-finite', () => zeroByReversal({ one: [unread], other: [0] }, inclinometer(), 'a'))
refuses('not-finite', () =>
  atHeight(exact(0), {
    readAt: exact(0),
    wanted: exact(1),
    response: { curve: () => unread, trust: normal(0.1, 'a', 1) },
  }),
)

refuses('not-positive', () => read({ ...strung, wheelbase: metre(0) }), 'wheelbase')
refuses('not-positive', () =>
  read({ ...strung, wheels: { 'front left': { front: [mm(1)], rear: [mm(1)], span: mm(-1) } } }),
)
refuses('not-positive', () => read({ ...taped, radius: metre(0) }), 'radius')
refuses('not-positive', () => read({ ...ran, diameter: metre(-0) }), 'diameter')
refuses('not-positive', () => read({ ...loose, arm: metre(0) }), 'arm')

refuses('no-sweep', () =>
  read({ ...swept, sweeps: [{ left: swept.sweeps[0]!.left, right: swept.sweeps[0]!.left }] }),
)
refuses('no-sweep', () =>
  read({ ...swept, sweeps: swept.sweeps.map(({ left, right }) => ({ left: right, right: left })) }),
)
refuses('no-sweep', () => smallAngleCaster(swept.sweeps[0]!.left, swept.sweeps[0]!.left, 'left'))

refuses('not-level', () =>
  read({ ...strung, wheels: { 'front left': { front: [mm(600)], rear: [mm(100)], span: mm(400) } } }),
)
for (const tilt of [45.1, -95, 1e99])
  refuses('not-level', () => read({ ...camber, readings: [{ wheelTurn: rad(0), reading: deg(tilt) }] }))
refuses('not-level', () =>
  read({
    ...swept,
    sweeps: swept.sweeps.map(({ left, right }) => ({ left: { ...left, camber: deg(89) }, right })),
  }),
)
refuses('not-level', () => read({ ...taped, belowHub: metre(0.33) }), 'belowHub')
refuses('not-level', () => read({ ...taped, rear: [metre(2.5)] }), 'rear')

const flat: FloorMap = {
  id: 'bay',
  name: 'bay',
  found: 'judged',
  heights: { 'front left': mm(0), 'front right': mm(0), 'rear left': mm(0), 'rear right': mm(0) },
  spread: { 'front left': mm(1), 'front right': mm(1), 'rear left': mm(1), 'rear right': mm(1) },
}
refuses('no-floor-size', () => read(camber, plain({ floor: flat, track: undefined })), 'front track')
refuses('no-floor-size', () => read(swept, plain({ floor: flat, wheelbase: undefined })), 'wheelbase')
refuses('no-floor-size', () =>
  read({ ...strung, along: { 'front left': mm(1), 'front right': mm(2) } }, plain({ track: undefined })),
)
refuses('no-floor-size', () => floorTilt(plain({ floor: flat, wheelbase: undefined })))
refuses('not-positive', () => floorTilt(plain({ floor: flat, wheelbase: metre(0) })))
refuses('not-finite', () => floorTilt(plain({ floor: flat, wheelbase: metre(unread) })))

const sizes = { track: metre(1.5), wheelbase: metre(2.5) }
const once = {
  axles: [{ axle: 'front', pads: 'front', turned: false, camber: { left: 0, right: 0 } }],
} as const
const turn = {
  axles: [
    { axle: 'front', pads: 'front', turned: true, camber: { left: 0, right: 0 } },
    { axle: 'rear', pads: 'rear', turned: true, camber: { left: 0, right: 0 } },
  ],
} as const
refuses('too-few', () => floorByTurning([once], sizes, inclinometer(), { id: 'a', name: 'a' }))
refuses('too-few', () =>
  floorByTurning([{ ...turn, rail: { reading: 0, turned: false } }], sizes, inclinometer(), {
    id: 'a',
    name: 'a',
  }),
)
const both = [
  { axles: turn.axles.map((axle) => ({ ...axle, turned: false })), rail: { reading: 0, turned: false } },
  { ...turn, rail: { reading: 0, turned: true } },
]
refuses('not-positive', () =>
  floorByTurning(both, { ...sizes, track: metre(0) }, inclinometer(), { id: 'a', name: 'a' }),
)
refuses('not-finite', () =>
  floorByTurning(
    [{ ...both[0]!, rail: { reading: unread, turned: false } }, both[1]!],
    sizes,
    inclinometer(),
    {
      id: 'a',
      name: 'a',
    },
  ),
)

refuses('bad-share', () => bestImprovement(normal(1, 'reading: a'), { coverage: 1 }))
const corner = mechanism({
  layout: 'double wishbone',
  camber: deg(0),
  toe: deg(0),
  tyreRadius: mm(330),
  wheelCentre: [0, 0.75, 0.33] as Point,
  upperFrontInner: [0.12, 0.42, 0.56],
  upperRearInner: [-0.14, 0.42, 0.55],
  upperOuter: [-0.025, 0.66, 0.55],
  lowerFrontInner: [0.18, 0.36, 0.22],
  lowerRearInner: [-0.2, 0.36, 0.225],
  lowerOuter: [0.012, 0.715, 0.2],
  tieInner: [-0.14, 0.36, 0.26],
  tieOuter: [-0.13, 0.69, 0.245],
})
refuses('no-sweep', () => sweepThroughLinkage(corner, [rad(1.6), rad(-1.6)]), 'steer')
