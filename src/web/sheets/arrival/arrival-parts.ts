import type { ArrivalSheet } from '../../../sheet/index.ts'
import type { Units } from '../../state/messages.ts'
import type { OpenJob } from '../../state/use-job.ts'

/** What every block of the arrival is given. */
export interface ArrivalParts {
  readonly sheet: ArrivalSheet
  readonly job: OpenJob
  readonly id: string
  readonly units: Units
}
