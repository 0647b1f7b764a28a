import type { PrivateValue } from './private-value.ts'

/** A bare entry of the log: what happened, exactly as it was written. It is never changed. @source definition */
export interface Entry {
  readonly kind: string
  readonly data: Readonly<Record<string, unknown>>
  /** The device's clock, shown and never used to order; absent until it is stamped. */
  readonly at?: string | undefined
}

/** A job file: the log and whose it is. @source definition */
export interface Job {
  readonly workshop: string
  /** The job's short number. */
  readonly job: string
  readonly entries: readonly Entry[]
  /** Personal values that stand in sealed entries as tokens. */
  readonly private?: readonly PrivateValue[]
}
