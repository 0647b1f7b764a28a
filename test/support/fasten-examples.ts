import {
  type Adapter,
  type Now,
  parseThread,
  type TaperedStud,
  type TorqueWrench,
} from '../../src/fasten/index.ts'
import { deg, lbfFt, mm, Nm } from '../../src/quantity/index.ts'

/** Invented wrenches and an adapter. */
export const longWrench: TorqueWrench = {
  name: 'wrench 2',
  kind: 'II A',
  scale: { low: Nm(40), high: Nm(200), step: Nm(1) },
  unit: 'N·m',
  reach: mm(500),
  handSpread: mm(20),
  calibratedUntil: '2027-03-31',
}
export const shortWrench: TorqueWrench = {
  ...longWrench,
  name: 'wrench 1',
  scale: { low: Nm(5), high: Nm(50), step: Nm(0.5) },
  reach: mm(280),
}
export const footWrench: TorqueWrench = {
  ...longWrench,
  name: 'wrench 3',
  scale: { low: lbfFt(30), high: lbfFt(250), step: lbfFt(2) },
  unit: 'lbf·ft',
  reach: mm(600),
}
export const openEnd: Adapter = {
  name: 'the 40 mm adapter',
  offset: mm(40),
  angle: deg(0),
  offsetSpread: mm(0.5),
  angleSpread: deg(5),
}
/** An invented lower ball joint: castle nut on a tapered stud. */
export const lowerBall: TaperedStud = {
  kind: 'tapered stud',
  name: 'lower ball joint, right',
  thread: parseThread('M14x1.5'),
  strength: '10.9',
  positions: [],
  singleUse: false,
  condition: 'dry',
  rubber: 'none',
  procedure: { kind: 'castle slot', floor: Nm(80), ceiling: Nm(120), slots: 6, holes: [deg(0)] },
}
/** Vehicle on stands, dry threads. */
export const yard: Now = { positions: [], condition: 'dry', today: '2026-11-25' }
