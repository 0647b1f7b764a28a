/** Why the clamp room says no. @source definition */
export type ClampRefusal = 'not-positive' | 'no-such-pivot' | 'hangs-above-target' | 'not-finite'
