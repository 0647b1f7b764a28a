/** A time in minutes: low, usual, high. @source definition */
export type ThreePoint = readonly [low: number, usual: number, high: number]
