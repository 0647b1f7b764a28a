import type { AxleSettings, Side } from '../linkage/index.ts'
import { metre, rad } from '../quantity/index.ts'
import type { ActsOn, Adjuster } from './adjuster.ts'

/** One adjuster of a whole axle, where it sits, and its inputs: one, or two of an offset sleeve. */
export interface AxleInput {
  readonly adjuster: Adjuster
  readonly on: ActsOn
  /** First of its inputs. */
  readonly at: number
}

/**
 * What adjusters do to a solid axle or a twist beam: sleeves add as vectors, wedges and threads as numbers.
 *
 * @param x inputs: m, or rad of sleeves and wedges
 * @source definition; sleeves: docs/methods/solid-axle.md
 */
export function axleSettingsByInputs(inputs: readonly AxleInput[], x: ArrayLike<number>): AxleSettings {
  const tilt = { left: { camber: 0, caster: 0 }, right: { camber: 0, caster: 0 } }
  const shim = { left: { camber: 0, toe: 0 }, right: { camber: 0, toe: 0 } }
  const links: [number, number, number, number] = [0, 0, 0, 0]
  let [tieRod, dragLink, sleeves, located] = [0, 0, false, false]
  for (const { adjuster, on, at } of inputs) {
    const by = x[at]!
    if (adjuster.kind === 'offset sleeve') {
      sleeves = true
      tilt[on as Side].camber += by
      tilt[on as Side].caster += x[at + 1]!
    } else if (adjuster.kind === 'wedge') shim[on as Side][adjuster.tilts] += by
    else if (adjuster.kind === 'thread' && adjuster.length === 'tie-rod') tieRod += by
    else if (adjuster.kind === 'thread' && adjuster.length === 'drag-link') dragLink += by
    else if (adjuster.kind === 'thread') {
      located = true
      links[Number(adjuster.length.slice(-1))]! += by
    }
  }
  const both = <T, U>(make: (one: T) => U, { left, right }: Readonly<Record<Side, T>>) => ({
    left: make(left),
    right: make(right),
  })
  return {
    shim: both(({ camber, toe }) => ({ camber: rad(camber), toe: rad(toe) }), shim),
    ...(sleeves
      ? { tilt: both(({ camber, caster }) => ({ camber: rad(camber), caster: rad(caster) }), tilt) }
      : {}),
    ...(tieRod === 0 ? {} : { tieRod: metre(tieRod) }),
    ...(dragLink === 0 ? {} : { dragLink: metre(dragLink) }),
    ...(located ? { links: [metre(links[0]), metre(links[1]), metre(links[2]), metre(links[3])] } : {}),
  }
}
