import type { FirstMove } from './first-move-of.ts'
import { wilsonInterval } from './wilson-interval.ts'

/** How many of some jobs had everything inside after their first moves. @source definition */
interface SuccessLine {
  /** "2026, first quarter", "all", "first job of its model". */
  readonly of: string
  readonly inside: number
  readonly jobs: number
  /** The share, and the shares that 95 % leave open (Wilson). */
  readonly share: number
  readonly low: number
  readonly high: number
}

/** First-move success over time. @source definition */
export interface FirstMoveSuccess {
  readonly all: SuccessLine | null
  /** By quarter of the year in which it was read again, earliest first; jobs without a date last. */
  readonly quarters: readonly SuccessLine[]
  /** Jobs before which none of the list had turned the same model, and all others; without a date in neither. */
  readonly byPast: readonly SuccessLine[]
  /** Jobs that are not counted, since a reading that was taken before was not taken again. */
  readonly notCounted: readonly string[]
}

/**
 * The share of jobs whose readings with a limit were all inside after the first round of moves, over time. A job counts when
 * something ended outside, or all that was read before was read again and was inside.
 *
 * @source own derivation: docs/methods/learned-response.md; interval: Wilson 1927
 */
export function firstMoveSuccess(jobs: readonly FirstMove[]): FirstMoveSuccess {
  const counted = jobs.filter(({ outside, notAgain }) => outside.length > 0 || notAgain.length === 0)
  const quarters = [...new Set(counted.map(({ when }) => quarterOf(when)))].sort(byTime)
  const dated = counted.filter(({ when }) => when !== null)
  const isFirst = (one: FirstMove) =>
    !dated.some(
      (other) =>
        other.job !== one.job &&
        Date.parse(other.when!) < Date.parse(one.when!) &&
        other.models.some((model) => one.models.includes(model)),
    )
  return {
    all: counted.length === 0 ? null : line('all', counted),
    quarters: quarters.map((quarter) =>
      line(
        quarter,
        counted.filter(({ when }) => quarterOf(when) === quarter),
      ),
    ),
    byPast: [
      line('first job of its model', dated.filter(isFirst)),
      line(
        'later jobs of a model',
        dated.filter((one) => !isFirst(one)),
      ),
    ].filter((one) => one.jobs > 0),
    notCounted: jobs.filter((one) => !counted.includes(one)).map(({ job }) => job),
  }
}

function line(of: string, jobs: readonly FirstMove[]): SuccessLine {
  const inside = jobs.filter(({ outside }) => outside.length === 0).length
  return {
    of,
    inside,
    jobs: jobs.length,
    share: jobs.length === 0 ? 0 : inside / jobs.length,
    ...wilsonInterval(inside, jobs.length),
  }
}

const undated = 'without a date'
const names = ['first', 'second', 'third', 'fourth'] as const

/** As the device's clock and its own zone say it. */
function quarterOf(when: string | null): string {
  const [, year, month] = when?.match(/^(\d{4})-(\d{2})/) ?? []
  return year ? `${year}, ${names[Math.floor((Number(month) - 1) / 3)]} quarter` : undated
}

/** By year and quarter; what has no date last. */
function byTime(a: string, b: string): number {
  const place = (of: string) =>
    of === undated
      ? Number.POSITIVE_INFINITY
      : 4 * Number(of.slice(0, 4)) + names.findIndex((name) => of.includes(name))
  return place(a) === place(b) ? 0 : place(a) < place(b) ? -1 : 1
}
