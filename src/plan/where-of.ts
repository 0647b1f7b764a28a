import type { Side } from './assembly.ts'

/**
 * The corner or axle that something stands on, as the keys of a state name it.
 *
 * @source definition
 * @example whereOf({ axle: 'front', side: 'left' }) // front left
 */
export const whereOf = ({
  axle,
  side,
}: {
  readonly axle: string | null
  readonly side: Side | null
}): string => [axle, side].filter(Boolean).join(' ')
