import type { Corner } from '../../../src/corner/index.ts'
import type { FindingsProblem } from '../../../src/findings/index.ts'
import type { Measured } from '../../../src/measure/index.ts'

const half = (m: Measured): Measured => ({
  value: m.value,
  parts: m.parts.map((part) => ({ ...part, effect: part.effect / 2 })),
})

const all = <K extends string>(
  of: Readonly<Partial<Record<K, Measured>>>,
): Readonly<Partial<Record<K, Measured>>> =>
  Object.fromEntries(Object.entries(of).map(([name, m]) => [name, half(m as Measured)])) as Partial<
    Record<K, Measured>
  >

/** The same job by somebody who thinks that he reads, and knows the points, twice as well. */
export function halved(problem: FindingsProblem): FindingsProblem {
  return {
    ...problem,
    axles: problem.axles.map((axle) => ({
      ...axle,
      corner: {
        ...axle.corner,
        points: Object.fromEntries(
          Object.entries(axle.corner.points).map(([name, point]) => [
            name,
            point.spread === undefined ? point : { ...point, spread: point.spread / 2 },
          ]),
        ) as Corner['points'],
      },
    })),
    readings: all(problem.readings),
    heights: all(problem.heights),
    turns: all(problem.turns),
    setBack: problem.setBack && half(problem.setBack),
    play: problem.play.map((one) => ({ ...one, swing: half(one.swing) })),
  }
}
