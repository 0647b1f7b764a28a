import { halfWidth, type Measured } from '../measure/index.ts'
import { kindOfSource, type SourceKind } from './source-name.ts'

/**
 * What a person can do to shrink a spread.
 *
 * @source definition
 */
export type Improvement =
  | 'read again'
  | 'sweep again'
  | 'zero by reversal'
  | 'map the floor with a level'
  | 'read at three places of the wheel'
  | 'measure SAI too'
  | 'a finer gauge'
  | 'a finer steer gauge'
  | 'set the strings again with a gauge bar'
  | 'free the play first'

/**
 * One improvement and what it would bring.
 *
 * @source definition
 */
export interface Advice {
  readonly improvement: Improvement
  /** How many readings or sweeps in all, where that is the point. */
  readonly times: number | null
  /** 95 % half-widths, SI. */
  readonly spreadNow: number
  readonly spreadThen: number
  readonly sentence: string
}

/**
 * What is offered, and how much better it would be.
 *
 * @source definition
 */
export interface ImprovementOptions {
  /** Readings or sweeps in all against one now. */
  readonly times?: number
  /** What is left of floor, zero and gauge errors, as a share. */
  readonly floorTo?: number
  readonly zeroTo?: number
  readonly gaugeTo?: number
  readonly coverage?: number
}

interface Way {
  readonly improvement: Improvement
  readonly kinds: readonly SourceKind[]
  readonly to: number
  readonly times: number | null
  readonly sentence: string
}

/**
 * Which single improvement shrinks an uncertainty most: each is tried on the budget and the interval worked out anew.
 *
 * @param measured the deciding value: a wheel, a cross or a total
 * @returns those that help by a hundredth or more, best first; empty when nothing on offer helps
 * @throws {Refusal} `bad-share` for a coverage that is none
 * @source own derivation: docs/methods/uncertainty.md
 * @example bestImprovement(rectangular(1, 'floor: bay 2, front left'))[0].improvement // map the floor with a level
 */
export function bestImprovement(measured: Measured, options: ImprovementOptions = {}): readonly Advice[] {
  const { coverage = 0.95 } = options
  const spreadNow = halfWidth(measured, coverage)
  const out: Advice[] = []
  for (const { improvement, kinds, to, times, sentence } of ways(options)) {
    const improved = {
      value: measured.value,
      parts: measured.parts.map((part) => {
        const kind = kindOfSource(part.source)
        return kind !== null && kinds.includes(kind) ? { ...part, effect: part.effect * to } : part
      }),
    }
    const spreadThen = halfWidth(improved, coverage)
    if (spreadThen < spreadNow * WORTH) out.push({ improvement, times, spreadNow, spreadThen, sentence })
  }
  return out.sort((a, b) => a.spreadThen - b.spreadThen)
}

const WORTH = 0.99

function ways({
  times = 4,
  floorTo = 0.25,
  zeroTo = 0.25,
  gaugeTo = 0.5,
}: ImprovementOptions): readonly Way[] {
  const mean = 1 / Math.sqrt(times)
  const way = (
    improvement: Improvement,
    kinds: readonly SourceKind[],
    to: number,
    sentence: string,
    count: number | null = null,
  ): Way => ({
    improvement,
    kinds,
    to,
    times: count,
    sentence,
  })
  return [
    way(
      'read again',
      ['reading', 'step'],
      mean,
      `Read ${times} times, taking the gauge off each time.`,
      times,
    ),
    way(
      'sweep again',
      ['reading', 'step', 'steer reading', 'steer step'],
      mean,
      `Make ${times} sweeps in all.`,
      times,
    ),
    way('zero by reversal', ['zero'], zeroTo, 'Zero the gauge by reading one face both ways round.'),
    way(
      'map the floor with a level',
      ['floor'],
      floorTo,
      'Measure the height of the wheel pads with a level, or by turning the vehicle round.',
    ),
    way(
      'read at three places of the wheel',
      ['run-out'],
      0,
      'Read with the wheel turned to three places, evenly around.',
    ),
    way('measure SAI too', ['assumed'], 0, 'Read the gauge along the wheel as well, brake held.'),
    way('a finer gauge', ['reading', 'step', 'scale'], gaugeTo, 'Use a gauge with half the error.'),
    way(
      'a finer steer gauge',
      ['steer reading', 'steer step', 'steer scale', 'steer zero'],
      gaugeTo,
      'Use turn plates with half the error, and set straight ahead anew.',
    ),
    way(
      'set the strings again with a gauge bar',
      ['strings'],
      gaugeTo,
      'Space the strings with one bar, front and rear.',
    ),
    way('free the play first', ['play'], 0, 'Renew the worn joint before this angle is decided.'),
  ]
}
