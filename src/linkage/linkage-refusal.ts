/**
 * Why this room says no. Where two faults meet, the first of this list counts.
 *
 * - `not-finite` any number is NaN or infinite
 * - `bad-input` a point or link is missing, not numbers, of an unknown layout or name, or a size that cannot be
 * - `zero-length-link` a link (or the strut) shorter than 1 µm
 * - `coincident-pivots` front and rear inner pivot of an arm, or both ends of the steering axis, are one point
 * - `degenerate` an arm's outer point (a trailing arm's wheel centre) lies on its own axis, or the wheel lies flat
 * - `singular` a rod has no lever about the steering axis, a hinge or roll axis lifts nothing, or a corner or an axle
 *   can move although its inputs stay
 * - `unreachable` travel, rack or target lies past the end of the way from the design pose
 * - `not-for-this-layout` the question has no meaning for this layout
 *
 * @source definition
 */
export type LinkageRefusal =
  | 'not-finite'
  | 'bad-input'
  | 'zero-length-link'
  | 'coincident-pivots'
  | 'degenerate'
  | 'singular'
  | 'unreachable'
  | 'not-for-this-layout'
