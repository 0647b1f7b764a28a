/** Where a wheel stands on paper: front before rear, left before right. */
export const wheelOrder = (text: string): number =>
  (text.includes('rear') ? 2 : 0) + (text.includes('right') ? 1 : 0)
