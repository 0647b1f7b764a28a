import type { Suspect } from '../../../src/findings/index.ts'
import type { FaultJob } from './fault-job.ts'
import { faultsOf } from './faults-of.ts'
import { conditions, frequencies } from './frequencies.ts'

/** A suspect and how likely somebody takes it to be. */
export interface Believed {
  readonly suspect: Suspect
  readonly belief: number
}

/** What somebody believes who has read nothing: the published frequencies of what this vehicle can have. */
export function byPrior({ vehicle }: FaultJob): readonly Believed[] {
  const all = faultsOf(vehicle)
  const shares = new Map<string, number>()
  for (const { suspect, share } of all)
    shares.set(suspect.kind, (shares.get(suspect.kind) ?? 0) + (share ?? 1))
  const weightOf = (kind: string): number => frequencies[kind as keyof typeof frequencies].weight
  const total = [...shares.keys()].reduce((sum, kind) => sum + weightOf(kind), 0)
  return [
    {
      suspect: { kind: 'out of adjustment', axle: null, side: null, at: null },
      belief: conditions.healthy + conditions.misadjusted,
    },
    ...all.map(({ suspect, share }) => ({
      suspect,
      belief:
        (conditions.faulty * weightOf(suspect.kind) * (share ?? 1)) / (total * shares.get(suspect.kind)!),
    })),
  ]
}
