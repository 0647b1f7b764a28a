/** Poses in one batch. */
export const posesPerBatch = 4_000
/** Most that travel changes from one pose to the next, m. */
const largestStep = 0.001

/**
 * Where a slider goes: travel and rack to and fro, each pose close to the one before. Travel and rack in turn, m.
 *
 * @source definition
 */
export function sweep({ travel, rack }: { travel: number; rack: number }): Float64Array {
  const drives = new Float64Array(2 * posesPerBatch)
  for (let i = 0; i < posesPerBatch; i++) {
    drives[2 * i] = travel * Math.sin((largestStep / travel) * i)
    drives[2 * i + 1] = rack * Math.sin((largestStep / travel) * 0.618 * i)
  }
  return drives
}
