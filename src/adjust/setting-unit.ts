import type { Adjuster } from './adjuster.ts'

/**
 * The SI unit in which an adjuster's setting, range, step and play are counted.
 *
 * @returns rad for an eccentric, turn for a thread, m for shims and a slotted bolt
 * @source definition
 * @example settingUnit({ kind: 'thread' }) // 'turn'
 */
export function settingUnit(adjuster: Pick<Adjuster, 'kind'>): 'rad' | 'm' | 'turn' {
  switch (adjuster.kind) {
    case 'eccentric':
      return 'rad'
    case 'thread':
      return 'turn'
    case 'shims':
    case 'slotted bolt':
      return 'm'
  }
}
