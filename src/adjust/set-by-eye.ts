import type { Adjuster } from './adjuster.ts'

/**
 * How far off a setting may be because a hand sets it by eye: half a step. What comes in pieces or rests in holes
 * or splines (shims, wedges, offset sleeves, top plates) is where it is, up to its play.
 *
 * @returns half-width in the adjuster's own unit
 * @source own choice
 */
export function setByEye({ kind, step }: Pick<Adjuster, 'kind' | 'step'>): number {
  return kind === 'shims' || kind === 'wedge' || kind === 'offset sleeve' || kind === 'top plate'
    ? 0
    : step / 2
}
