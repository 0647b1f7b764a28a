/** Steps of belief that are told: the simulated vehicles bear out no finer one. @source docs/methods/findings.md */
const step = 5

/** Belief for people: in steps of five per cent, and never as good as sure. */
export function beliefText(belief: number): string {
  const percent = Math.round((100 * belief) / step) * step
  if (percent >= 100) return 'more than 95 %'
  if (percent <= 0) return 'less than 5 %'
  return `about ${percent} %`
}
