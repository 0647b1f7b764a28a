import type { ReactNode } from 'react'
import type { Units } from '../state/messages.ts'
import type { OpenJob } from '../state/use-job.ts'

/** What a stage with a sheet and a worker of its own is given. */
export interface StageProps {
  readonly job: OpenJob
  readonly id: string
  readonly units: Units
  /** What stands above every sheet, and below it. */
  readonly head: ReactNode
  readonly foot: ReactNode
}
