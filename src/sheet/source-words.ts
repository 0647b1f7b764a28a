import { kindOfSource } from '../gauge/index.ts'

/** What kind of error it is, as a person would say it. */
const words: Readonly<Record<string, string>> = {
  reading: 'putting the gauge on and reading it',
  step: 'steps of the gauge',
  'steer reading': 'reading the steer angle',
  'steer step': 'steps of the steer scale',
  scale: 'scale of the gauge',
  zero: 'zero of the gauge',
  'steer scale': 'scale of the steer gauge',
  'steer zero': 'straight ahead of the steer gauge',
  strings: 'spacing of the strings',
  'tape height': 'height at which the tape was held',
  floor: 'floor',
  'run-out': 'run-out of the wheels',
  play: 'play of the joint',
  height: 'ride height',
  response: 'how the vehicle answers',
  linkage: 'points of the corner model',
  assumed: 'what was assumed',
}

/** The name of an error in words; one that no gauge named keeps its own. @source definition */
export const sourceWords = (source: string): string => {
  const kind = kindOfSource(source)
  return (kind && words[kind]) ?? source
}
