import type { Adjuster } from './adjuster.ts'

/**
 * The setting that gives a stroke: the inverse of `strokeOf`, stopped at the ends of the range.
 *
 * @param stroke m, or rad for an offset sleeve and a wedge
 * @returns setting in the adjuster's own unit
 * @source definition
 * @example settingAt({ kind: 'thread', pitch: mm(1.5), sleeve: false, range: [turn(-5), turn(5)] }, mm(3)) // 2 turns
 */
export function settingAt(adjuster: Adjuster, stroke: number): number {
  const [low, high] = adjuster.range
  return Math.min(high, Math.max(low, free(adjuster, stroke)))
}

function free(adjuster: Adjuster, stroke: number): number {
  switch (adjuster.kind) {
    case 'eccentric': {
      const sine = (adjuster.fitted === 'turned round' ? -stroke : stroke) / adjuster.throw
      return Math.asin(Math.min(1, Math.max(-1, sine)))
    }
    case 'shims':
    case 'wedge':
      return stroke + (adjuster.asDrawn ?? 0)
    case 'thread':
      return stroke / ((adjuster.sleeve ? 2 : 1) * adjuster.pitch)
    case 'slotted bolt':
    case 'slide':
    case 'top plate':
    case 'offset sleeve':
    case 'sub-frame shift':
      return stroke
  }
}
