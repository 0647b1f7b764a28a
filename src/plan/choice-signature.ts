import type { Choice } from './choice.ts'

/** A choice as one string: equal for equal choices, whatever the reasons. @source definition */
export function choiceSignature({ open, bench, off, standIns, letDown, raised }: Choice): string {
  const sorted = (set: ReadonlySet<string>) => [...set].sort().join(',')
  const held = Object.entries(standIns)
    .map((pair) => pair.join('='))
    .sort()
    .join(',')
  return [open, bench, off, letDown, raised].map(sorted).concat(held).join('|')
}
