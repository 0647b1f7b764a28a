import type { JobState } from '../job/index.ts'
import { Refusal } from '../quantity/index.ts'
import { gaugeContext } from './gauge-setting.ts'
import { readRound } from './read-round.ts'
import type { ReadRound } from './recorded-move.ts'
import type { SheetSources } from './sources.ts'

/** The rounds of a job that can be read; those that cannot teach nothing here, and the job's own sheet tells why. */
export const readRounds = (sources: SheetSources, state: JobState): readonly ReadRound[] =>
  state.rounds.flatMap((round): ReadRound[] => {
    if (round.readings.length === 0) return []
    try {
      return [{ round, said: readRound(round, gaugeContext(sources, state, round)) }]
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      return []
    }
  })
