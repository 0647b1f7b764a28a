import { putInputs } from './inputs-of.ts'
import type { SearchSpace } from './search-space.ts'

/**
 * The inputs of a space at strokes, one or two per axis.
 *
 * @source definition
 */
export function inputsAt({ axes, inputs }: Pick<SearchSpace, 'axes' | 'inputs'>, strokes: ArrayLike<number>) {
  const x = new Float64Array(inputs)
  for (let j = 0; j < axes.length; j++) putInputs(axes[j]!.adjuster, strokes[j]!, x, axes[j]!.input)
  return x
}
