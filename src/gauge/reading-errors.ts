/** What a gauge adds anew at each reading. */
export interface ReadingErrors {
  readonly resolution: number
  readonly placing: number
}
