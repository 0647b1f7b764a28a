import type { Looks } from './adjuster.ts'

/** The other sense of turning. */
export const otherWay = (looks: Looks): Looks => (looks === 'clockwise' ? 'anticlockwise' : 'clockwise')
