/**
 * Why this room says no. Where two faults meet, the first of this list counts.
 *
 * - `not-finite` any number is NaN or infinite
 * - `bad-input` a point or link is missing, not numbers, of an unknown layout or name, or a size that cannot be
 * - `zero-length-link` a link (or the strut) shorter than 1 µm
 * - `coincident-pivots` front and rear inner pivot of an arm, or both ends of the steering axis, are one point
 * - `degenerate` an arm's outer point lies on its own inner axis, or the wheel lies flat
 * - `singular` the tie rod has no lever about the steering axis, or the corner can move without its wheel moving
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
