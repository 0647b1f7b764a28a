/** How far two rivals' results may lie apart, m and rad. */
const mostApart = 1e-12

/**
 * Largest difference between two rivals' results.
 *
 * @throws {Error} when they lie further apart than 1e-12, or are not numbers
 */
export function agreement(ours: Float64Array, theirs: Float64Array): number {
  if (ours.length !== theirs.length) throw new Error(`${ours.length} numbers against ${theirs.length}.`)
  let most = 0
  for (let i = 0; i < ours.length; i++) {
    const apart = Math.abs(ours[i]! - theirs[i]!)
    if (!(apart <= mostApart))
      throw new Error(`The rivals disagree in number ${i}: ${ours[i]} against ${theirs[i]}.`)
    if (apart > most) most = apart
  }
  return most
}
