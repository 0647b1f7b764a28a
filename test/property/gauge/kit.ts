import type {
  DialIndicator,
  GaugeContext,
  Inclinometer,
  Rule,
  SteerGauge,
  Strings,
  Tape,
} from '../../../src/gauge/index.ts'
import { metre, rad } from '../../../src/quantity/index.ts'

const none = { resolution: rad(0), placing: rad(0), accuracy: rad(0), zeroError: rad(0) }
const noLength = { resolution: metre(0), placing: metre(0) }

/** Gauges without any error but those given. */
export const inclinometer = (errors: Partial<Inclinometer> = {}): Inclinometer => ({
  kind: 'inclinometer',
  id: 'level',
  name: 'level',
  zeroing: 'none',
  ...none,
  ...errors,
})
export const turnPlates = (errors: Partial<SteerGauge> = {}): SteerGauge => ({
  kind: 'turn plates',
  id: 'plates',
  name: 'plates',
  ...none,
  ...errors,
})
export const rule = (errors: Partial<Rule> = {}): Rule => ({
  kind: 'rule',
  id: 'rule',
  name: 'rule',
  ...noLength,
  zeroError: metre(0),
  ...errors,
})
export const tape = (errors: Partial<Tape> = {}): Tape => ({
  kind: 'tape',
  id: 'tape',
  name: 'tape',
  ...noLength,
  accuracy: 0,
  ...errors,
})
export const strings = (errors: Partial<Strings> = {}): Strings => ({
  kind: 'strings',
  id: 'strings',
  name: 'strings',
  spacing: metre(0),
  length: metre(4),
  squareness: rad(0),
  ...errors,
})
export const dial = (errors: Partial<DialIndicator> = {}): DialIndicator => ({
  kind: 'dial indicator',
  id: 'dial',
  name: 'dial',
  ...noLength,
  accuracy: metre(0),
  ...errors,
})

const still = { amplitude: rad(0), known: 'measured' } as const
/** A flat floor and true rims, so that nothing but what a test adds is uncertain. */
export const plain = (context: Partial<GaugeContext>): GaugeContext => ({
  instruments: [inclinometer(), turnPlates(), rule(), tape(), strings(), dial()],
  padsWithin: metre(0),
  track: { front: metre(1.5), rear: metre(1.5) },
  wheelbase: metre(2.5),
  runOut: { 'front left': still, 'front right': still, 'rear left': still, 'rear right': still },
  ...context,
})
