import { adapterSum } from './adapter-sum.ts'
import { casterSum } from './caster-sum.ts'
import { castleSum } from './castle-sum.ts'
import { ringSum } from './ring-sum.ts'
import { runOutSum } from './run-out-sum.ts'
import { steeringWheelSum } from './steering-wheel-sum.ts'
import type { SumTopic } from './sum-answer.ts'
import { thrustSum } from './thrust-sum.ts'
import { toeSum } from './toe-sum.ts'
import { tyreSum } from './tyre-sum.ts'
import { unitsSum } from './units-sum.ts'
import { vinSum } from './vin-sum.ts'

/** All questions that can be asked without a job. */
export const topics: readonly SumTopic[] = [
  adapterSum,
  castleSum,
  ringSum,
  casterSum,
  runOutSum,
  toeSum,
  steeringWheelSum,
  thrustSum,
  tyreSum,
  unitsSum,
  vinSum,
]

/** Help of `axlewright sum`: each question with an example that can be run. */
export const sumHelp = `
Questions, each with an example (WORD=VALUE; every value with its unit):

${topics.map(({ about, example }) => `  ${about}:\n    axlewright sum ${example}`).join('\n')}

How far your readings may be off is taken as is common, and said; say it better with within:
    axlewright sum ${casterSum.example} within="reading=0.05°, steer=0.5°"

For a gauge of your own kit with all its errors: "axlewright read --help".`
