import type { Adjuster } from './adjuster.ts'

const ways = ['fore and aft', 'across', 'up and down'] as const

/**
 * What an adjuster is to its layout, so that one on another corner model can be told to be the same, whatever its name and
 * whichever way its setting counts: kind, what it moves, and along which axis of the vehicle.
 *
 * @returns `sign` +1 where a positive stroke goes forward, outward, up, or makes longer
 * @source definition
 */
export function roleOf(adjuster: Adjuster): { readonly role: string; readonly sign: 1 | -1 } {
  const along = (what: string, vector: readonly number[]) => {
    const axis = vector.reduce((most, value, i) => (Math.abs(value) > Math.abs(vector[most]!) ? i : most), 0)
    return { role: `${adjuster.kind}: ${what}, ${ways[axis]}`, sign: vector[axis]! < 0 ? -1 : 1 } as const
  }
  switch (adjuster.kind) {
    case 'eccentric':
    case 'top plate':
      return along(adjuster.moves, adjuster.along)
    case 'shims':
    case 'slide':
      return along([...adjuster.moves].sort().join(' and '), adjuster.along)
    case 'slotted bolt':
      return along(adjuster.turns, adjuster.axis)
    case 'thread':
      return { role: `thread: ${adjuster.length}`, sign: 1 }
    case 'wedge':
      return { role: `wedge: ${adjuster.tilts}`, sign: 1 }
    case 'offset sleeve':
    case 'sub-frame shift':
      return { role: adjuster.kind, sign: 1 }
  }
}
