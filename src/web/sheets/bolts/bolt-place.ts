import type { SheetBolt } from '../../../sheet/index.ts'

/** A wheel as a part of the address: "front-right". */
export const wheelInAddress = (wheel: string): string => wheel.replaceAll(' ', '-')

/** The joint that an address names; undefined when the bolt book has none such. */
export const boltAt = (
  bolts: readonly SheetBolt[],
  { wheel, joint }: { readonly wheel: string; readonly joint: string },
): SheetBolt | undefined => bolts.find((bolt) => wheelInAddress(bolt.wheel) === wheel && bolt.joint === joint)
