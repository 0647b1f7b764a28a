import type { SheetBolt } from '../../../sheet/index.ts'

/** The first joint that is not done, other than this one; null when there is none. */
export const nextOpen = (bolts: readonly SheetBolt[], other?: SheetBolt): SheetBolt | null =>
  bolts.find((bolt) => !bolt.done && !(bolt.wheel === other?.wheel && bolt.joint === other.joint)) ?? null
