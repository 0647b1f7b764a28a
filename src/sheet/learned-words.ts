import type { LearnedFactor } from '../adjust/index.ts'
import { normalQuantile } from '../measure/index.ts'

/** Both tails of 95 %. */
const reach = normalQuantile(0.975)

/** A factor with its 95 % spread: "0.86 ± 0.12". */
export const factorText = ({ factor, spread }: Pick<LearnedFactor, 'factor' | 'spread'>): string =>
  `${factor.toFixed(2).replace('-', '−')} ± ${(reach * spread).toFixed(2)}`
