import type { Corner } from './corner-schema.ts'

/** Whether the axle has an adjuster once, for both wheels. @source definition */
export const isOfAxle = (a: Corner['adjusters'][string]): boolean =>
  a.kind === 'sub-frame shift' || (a.kind === 'thread' && a.span === 'axle')
