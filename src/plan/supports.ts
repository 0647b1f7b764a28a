import type { SupportIs } from './state.ts'

/**
 * What may be done on which support: wheel off and hands at the wheel; hands under; weight on the wheels; rolling.
 *
 * @source common practice, no source
 */
export const supports: Readonly<
  Record<'lifted' | 'handsUnder' | 'onWheels' | 'carried', readonly SupportIs[]>
> = {
  lifted: ['on stands, seen loaded', 'on the lift, arms locked'],
  handsUnder: ['on stands, seen loaded', 'on the lift, arms locked', 'wheels on ramps or over the pit'],
  onWheels: ['on its wheels', 'wheels on ramps or over the pit', 'on slip plates'],
  carried: [
    'on stands, seen loaded',
    'on the lift, arms locked',
    'on its wheels',
    'wheels on ramps or over the pit',
    'on slip plates',
  ],
}
