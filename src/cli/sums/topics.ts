import { adapterSum } from './adapter-sum.ts'
import { castleSum } from './castle-sum.ts'
import { ringSum } from './ring-sum.ts'
import type { SumTopic } from './sum-answer.ts'
import { toeSum } from './toe-sum.ts'
import { tyreSum } from './tyre-sum.ts'
import { unitsSum } from './units-sum.ts'
import { vinSum } from './vin-sum.ts'

/** All questions that can be asked without a job. Caster from a sweep and run-out are gauge readings: `read`. */
export const topics: readonly SumTopic[] = [adapterSum, castleSum, ringSum, toeSum, tyreSum, unitsSum, vinSum]

/** Help of `axlewright sum`: each question with an example that can be run. */
export const sumHelp = `
Questions, each with an example (WORD=VALUE; every value with its unit):

${topics.map(({ about, example }) => `  ${about}:\n    axlewright sum ${example}`).join('\n')}

Caster from a steer sweep and run-out come from a gauge: "axlewright read --help".`
