import type { JobState, Round } from '../job/index.ts'
import type { ProofRound } from './proof-sheet.ts'

/** Which rounds stand on the proof as before and after. */
export interface ProofRounds {
  readonly before: Round | null
  /** The last one that proves; else the last one at all, which then proves nothing. */
  readonly after: Round | null
}

/**
 * The first round as found and the last proving round with readings. Without a proving round the last other one is shown,
 * as what it is; without a round as found the first one.
 */
export function proofRounds({ rounds }: JobState): ProofRounds {
  const read = rounds.filter(({ readings }) => readings.length > 0)
  const before = read.find(({ purpose }) => purpose === 'as found') ?? read[0] ?? null
  const others = read.filter((round) => round !== before && round.purpose !== 'as found')
  return { before, after: others.findLast(({ purpose }) => purpose === 'proving') ?? others.at(-1) ?? null }
}

/** What a proof says of a round: also whether the vehicle is still as it was read. */
export function proofRound(round: Round | null, { moves, renewed }: JobState): ProofRound | null {
  if (!round) return null
  const last = Math.max(...round.readings.map(({ entry }) => entry))
  return {
    number: round.number,
    purpose: round.purpose,
    day: round.readings[0]?.at?.slice(0, 10) ?? null,
    movedSince: moves.some(({ entry }) => entry > last),
    renewedSince: renewed.some(({ entry }) => entry > last),
  }
}
