import { foldJob } from '../job/index.ts'
import type { AxleEnd, ReadingName } from '../linkage/index.ts'
import { limitsOf } from '../spec/index.ts'
import { cornerOfJob, nameOfJob } from './past-job.ts'
import { readRounds } from './read-rounds.ts'
import { partsChanged } from './recorded-move.ts'
import { cornerAt, type SheetSources } from './sources.ts'

/** How the first round of moves of a job ended; plain data. @source definition */
export interface FirstMove {
  readonly job: string
  readonly vehicle: string
  /** Marks of the drawings whose adjusters were turned. */
  readonly models: readonly string[]
  /** When it was read again, by the device's clock; null where nobody stamped it. */
  readonly when: string | null
  /** Readings with a limit on the axles that were turned at, as they were read after the moves. */
  readonly inside: readonly ReadingName[]
  readonly outside: readonly ReadingName[]
  /** Read before and not again. */
  readonly notAgain: readonly ReadingName[]
}

/**
 * The first time that adjusters were turned on what had been read, and were read again, in a job: which readings with a limit
 * were inside then. Moves across a new part are none: they were not made for what stood there before.
 *
 * @returns null where nothing was turned and read again, or nothing had a limit
 * @source definition
 */
export function firstMoveOf(sources: SheetSources): FirstMove | null {
  const state = foldJob(sources.job.entries)
  const limits = sources.spec ? limitsOf(sources.spec) : {}
  const rounds = readRounds(sources, state)
  for (const [i, after] of rounds.slice(1).entries()) {
    const before = rounds[i]!
    const [from, to] = [before, after].map(({ round }) => round.readings[0]!.entry)
    const turned = state.moves.filter(({ entry }) => entry > from! && entry < to!)
    if (turned.length === 0 || partsChanged(state, before.round, after.round)) continue
    const ends = (['front', 'rear'] as const).filter((end) =>
      turned.some(({ wheel }) => wheel.startsWith(end)),
    )
    const names = (Object.keys(limits) as ReadingName[]).filter(
      (name) => before.said.readings[name] && ends.some((end) => isOf(name, end)),
    )
    if (names.length === 0) continue
    const judged = names.map((name) => {
      const [said, limit] = [after.said.readings[name]?.measured.value, limits[name]!]
      return { name, is: said === undefined ? null : said >= limit.low && said <= limit.high }
    })
    const those = (is: boolean | null) => judged.filter((one) => one.is === is).map(({ name }) => name)
    return {
      ...nameOfJob(sources, state),
      models: ends.flatMap((end) => {
        const corner = cornerAt(sources, end)
        return corner ? [cornerOfJob(corner).model] : []
      }),
      when: after.round.readings[0]!.at,
      inside: those(true),
      outside: those(false),
      notAgain: those(null),
    }
  }
  return null
}

/** Whether a reading is of an axle; the thrust line is the rear one's. */
const isOf = (name: ReadingName, end: AxleEnd): boolean =>
  name.startsWith(end) || (name === 'thrust' && end === 'rear')
