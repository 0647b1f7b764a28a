/** A point of a drawing at a radius: `clock` is rad clockwise from 12 o'clock. */
export const atClock = (clock: number, radius: number): readonly [number, number] => [
  radius * Math.sin(clock),
  -radius * Math.cos(clock),
]
