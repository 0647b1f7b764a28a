import type { Adjuster } from './adjuster.ts'

/**
 * The SI unit in which an adjuster's setting, range, step and play are counted.
 *
 * @returns rad for an eccentric, an offset sleeve and a wedge, turn for a thread, m for the rest
 * @source definition
 * @example settingUnit({ kind: 'thread' }) // 'turn'
 */
export function settingUnit(adjuster: Pick<Adjuster, 'kind'>): 'rad' | 'm' | 'turn' {
  switch (adjuster.kind) {
    case 'eccentric':
    case 'offset sleeve':
    case 'wedge':
      return 'rad'
    case 'thread':
      return 'turn'
    case 'shims':
    case 'slotted bolt':
    case 'slide':
    case 'top plate':
    case 'sub-frame shift':
      return 'm'
  }
}
