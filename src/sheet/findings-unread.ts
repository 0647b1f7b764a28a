import type { FindingsProblem } from '../findings/index.ts'

/** What would have told more and is not in the log. */
export function unreadOf({
  axles,
  readings,
  heights,
  checks,
  play,
  treads,
  road,
  setBack,
}: FindingsProblem): readonly string[] {
  const missing = (end: string, angle: string) =>
    (['left', 'right'] as const).some((side) => !(`${end} ${side} ${angle}` in readings))
  const angles = axles.flatMap(({ end }) =>
    (end === 'front' ? ['camber', 'caster', 'sai', 'toe'] : ['camber', 'toe'])
      .filter((angle) => missing(end, angle))
      .map((angle) => `${angle === 'sai' ? 'SAI' : angle} of both ${end} wheels`),
  )
  return [
    ...angles,
    ...axles
      .filter(({ end }) => !(`${end} left` in heights && `${end} right` in heights))
      .map(({ end }) => `ride heights of the ${end} axle`),
    ...(setBack ? [] : ['set-back']),
    ...(checks.length > 0 ? [] : ['hand checks']),
    ...(play.length > 0 ? [] : ['play of the joints']),
    ...(treads.length > 0 ? [] : ['tread depths across each tyre']),
    ...(road.length > 0 ? [] : ['road test']),
  ]
}
