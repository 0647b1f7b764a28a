import type { RowName } from './reading-rows.ts'

/** Whether a row is made of toes: total toe, thrust, toe to the thrust line, the steering wheel. */
export const isToeRow = (name: RowName): boolean =>
  name.includes('toe') || name === 'thrust' || name === 'steering wheel'
