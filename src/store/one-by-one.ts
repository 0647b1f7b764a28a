const waiting = new Map<string, Promise<unknown>>()

/**
 * Does work on one place after the other within this program, in the order it was asked for.
 *
 * @source definition
 */
export async function oneByOne<T>(place: string, work: () => Promise<T>): Promise<T> {
  const before = waiting.get(place) ?? Promise.resolve()
  const mine = before.then(work, work)
  const settled = mine.catch(() => undefined)
  waiting.set(place, settled)
  try {
    return await mine
  } finally {
    if (waiting.get(place) === settled) waiting.delete(place)
  }
}
