import type { HandoverSheet } from '../../../sheet/index.ts'
import type { OpenJob } from '../../state/use-job.ts'
import type { Who } from './use-who.ts'

/** What every block of the handover is given. */
export interface HandoverParts {
  readonly sheet: HandoverSheet
  readonly job: OpenJob
  readonly id: string
  readonly who: Who
}
