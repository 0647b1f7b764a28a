import type { AxleName } from './assembly.ts'
import type { JointIs, SupportIs } from './state.ts'

/** One thing that was written down while the work went on, by the assembly's ids. @source definition */
export type RecordedFact =
  | {
      readonly is: 'joint'
      readonly id: string
      readonly to: Exclude<JointIs, 'closed'>
      readonly fastener?: 'new'
    }
  | { readonly is: 'pin'; readonly id: string }
  | { readonly is: 'mark'; readonly id: string; readonly bodySideToo: boolean }
  | {
      readonly is: 'part'
      readonly id: string
      readonly to: 'off' | 'freed' | 'hung' | 'tied up' | 'in place' | 'new' | 'broken'
    }
  | { readonly is: 'compared'; readonly id: string; readonly when: 'before lifting' | 'beside the old' }
  | { readonly is: 'support'; readonly axle: AxleName; readonly by: SupportIs }
  | {
      readonly is: 'energy'
      readonly id: string
      readonly to: 'held by its set' | 'held by the jack' | 'in the compressor' | 'let down' | 'raised'
    }
  | { readonly is: 'line'; readonly id: string; readonly to: 'capped' | 'bled' }
  | { readonly is: 'set'; readonly adjuster: string }
  | { readonly is: 'read'; readonly kind: 'as found' | 'provisional' | 'proven'; readonly settled: boolean }
  /** Anything that is one key and one value: heights, pressures, pedal, steering, lamp, card, road test. */
  | { readonly is: 'plain'; readonly key: string; readonly value: string }
