import { putInputs } from './inputs-of.ts'
import type { SearchSpace } from './search-space.ts'

/**
 * The inputs of a space at strokes, one or two per axis, in the space's own room: they hold until the next call.
 *
 * @source definition
 */
export function inputsAt(
  { axes, room }: Pick<SearchSpace, 'axes' | 'room'>,
  strokes: ArrayLike<number>,
): Float64Array {
  const x = room.inputs
  for (let j = 0; j < axes.length; j++) putInputs(axes[j]!.adjuster, strokes[j]!, x, axes[j]!.input)
  return x
}
