import type { JointNode } from './assembly.ts'

/**
 * Whether an as-found mark is recorded before a joint is disturbed: it carries an adjuster, or its file asks for one.
 *
 * @source common practice, no source
 */
export const needsMark = ({ file }: Pick<JointNode, 'file'>): boolean =>
  file.adjuster !== undefined || (file.marks ?? []).length > 0
