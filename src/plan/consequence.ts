import type { AxleName } from './assembly.ts'

/** What follows from the work. @source definition */
export interface Consequence {
  readonly kind:
    | 'angles'
    | 'clamp pose'
    | 'settle again'
    | 'height of a torsion bar'
    | 'bleed'
    | 'pump pedal'
    | 'lamp'
    | 're-tighten'
    | 'level sensor'
    | 'centring'
    | 'electronics'
    | 'second check'
  readonly axle: AxleName | null
  /** Parts and joints it follows from, by id. */
  readonly because: readonly string[]
  /** For people. */
  readonly sentence: string
}
