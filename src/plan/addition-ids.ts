import type { Addition } from './addition.ts'

/** All that an alternative adds: joints, parts, holds and corners. @source definition */
export const additionIds = ({
  open = [],
  bench = [],
  off = [],
  standIn,
  letDown,
  raised,
}: Addition): readonly string[] => [
  ...open,
  ...bench,
  ...off,
  ...[standIn?.[0], letDown, raised].filter((id) => id !== undefined),
]
