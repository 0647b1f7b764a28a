import { type Corner, wholeAxlePoints } from '../corner/index.ts'
import type { AxleEnd } from '../linkage/index.ts'
import type { WholeWay } from './axle-model.ts'
import type { Family } from './family.ts'
import type { Suspect } from './suspect.ts'
import type { VehicleWay } from './vehicle-way.ts'

const sides = ['left', 'right'] as const
const degree = Math.PI / 180

interface WholeFamily {
  readonly suspect: Omit<Suspect, 'axle'>
  readonly main: WholeWay
  readonly also?: readonly { readonly way: WholeWay; readonly spread: number }[]
  readonly share?: number
  readonly size?: Family['size']
}

/**
 * What can be wrong with an axle that is one body, or with a twist beam.
 *
 * @source own derivation: docs/methods/findings.md; ways: from memory
 */
export function familiesOfWholeAxle(corner: Corner, end: AxleEnd): readonly Family[] {
  const drawn = wholeAxlePoints(corner)
  const on = (whole: WholeWay): VehicleWay => ({ axles: { [end]: { whole } } })
  const solid = 'location' in drawn ? drawn : null
  const steered = solid?.steering != null
  const list: WholeFamily[] = sides.flatMap((side) => wheelFaults(side, steered))
  if (steered)
    list.push({
      suspect: { kind: 'bent steering arm or tie rod', side: null, at: null },
      main: { tieRod: -1 },
    })
  if (solid?.location.kind === 'links') list.push(...linkFaults(corner))
  else {
    list.push(
      { suspect: { kind: 'axle turned', side: null, at: null }, main: { yaw: 1 } },
      {
        suspect: { kind: 'axle shifted', side: null, at: null },
        main: { shift: solid ? [0, 1, 0] : [1, 0, 0] },
      },
    )
    if (!('location' in drawn))
      for (const side of sides) {
        // one bush lets its end of the beam go back: the beam turns about the other one
        const yaw = (side === 'left' ? 1 : -1) / (2 * drawn.left.pivot[1])
        const at = bushAt(corner, 'beam-pivot')
        if (at) list.push({ suspect: { kind: 'collapsed bush', side, at }, main: { yaw }, share: 0.5 })
      }
  }
  return list.map(({ suspect, main, also = [], share = 1, size }) => ({
    suspect: { kind: suspect.kind, axle: end, side: suspect.side, at: suspect.at },
    share,
    ...(size ? { size } : {}),
    main: on(main),
    also: also.map(({ way, spread }) => ({ way: on(way), spread })),
  }))
}

const bushAt = (corner: Corner, point: string): string | undefined =>
  Object.entries(corner.joints).find(([, joint]) => joint.at === point && joint.bush)?.[0]

function wheelFaults(side: 'left' | 'right', steered: boolean): readonly WholeFamily[] {
  const shim = (camber: number, toe: number): WholeWay => ({ shim: { [side]: { camber, toe } } })
  const tilt = (camber: number, caster: number): WholeWay => ({ tilt: { [side]: { camber, caster } } })
  const list: WholeFamily[] = [
    steered
      ? {
          suspect: { kind: 'bent axle or beam', side, at: null },
          main: tilt(1, 0),
          also: [{ way: tilt(0, 1), spread: 0.3 * degree }],
        }
      : {
          suspect: { kind: 'bent axle or beam', side, at: null },
          main: shim(1, 0),
          also: [{ way: shim(0, 1), spread: 0.5 * degree }],
        },
    {
      suspect: { kind: 'loose wheel bearing', side, at: null },
      main: shim(-1, 0),
      also: [{ way: shim(0, 1), spread: 0.1 * degree }],
    },
  ]
  if (steered)
    list.push(
      { suspect: { kind: 'worn kingpin', side, at: 'knuckle-on-kingpin' }, main: shim(-1, 0) },
      {
        suspect: { kind: 'bent knuckle', side, at: null },
        main: shim(1, 0),
        also: [{ way: shim(0, 1), spread: 0.5 * degree }],
      },
    )
  return list
}

/** Lower links 0 and 1 hold the axle square, 3 is the track bar (with four even links the upper two hold it sideways). */
function linkFaults(corner: Corner): readonly WholeFamily[] {
  const link = (i: number, by: number): [number, number, number, number] => {
    const all: [number, number, number, number] = [0, 0, 0, 0]
    all[i] = by
    return all
  }
  const half = Math.abs(corner.points['lower-link-outer']?.at[1] ?? 0.5)
  const bar = corner.points['track-bar-inner'] !== undefined
  const bushes = Object.entries(corner.joints).filter(
    ([, joint]) => joint.bush && /^lower-link-/.test(joint.at ?? ''),
  )
  return [
    { suspect: { kind: 'axle turned', side: null, at: null }, main: { links: [half, -half, 0, 0] } },
    {
      suspect: { kind: 'axle shifted', side: null, at: null },
      main: bar ? { links: link(3, 1) } : { shift: [0, 1, 0] },
    },
    ...sides.flatMap((side, i): WholeFamily[] => [
      { suspect: { kind: 'bent link', side, at: 'lower-link' }, main: { links: link(i, -1) } },
      { suspect: { kind: 'wrong part', side, at: 'lower-link' }, main: { links: link(i, 1) } },
      ...bushes.map(
        ([at]): WholeFamily => ({
          suspect: { kind: 'collapsed bush', side, at },
          // driven and braked: the rubber gives either way
          main: { links: link(i, 1) },
          share: 1 / bushes.length,
          size: { back: 0.5 },
        }),
      ),
    ]),
  ]
}
