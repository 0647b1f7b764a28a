import { type Corner, readCorner, startingLayout, startingLayouts } from '../../../src/corner/index.ts'

const corners = new Map<string, Corner>()
for (const { id } of startingLayouts) {
  const read = readCorner(await startingLayout(id))
  if (!read.ok) throw new Error(`${id}: ${JSON.stringify(read.problems)}`)
  corners.set(id, read.value)
}

/** The layouts to start from, read. */
export const startingCorners: ReadonlyMap<string, Corner> = corners
export const cornerOf = (id: string): Corner => corners.get(id)!
