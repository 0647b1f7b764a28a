import type { Side } from '../../../linkage/index.ts'

/** The wheel that a drawing, a map or a pose belongs to: "front right". */
export const wheelOf = ({ title, side }: { readonly title: string; readonly side: Side }): string =>
  `${/\brear\b/i.test(title) ? 'rear' : 'front'} ${side}`
