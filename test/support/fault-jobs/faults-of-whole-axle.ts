import type { SolidAxlePoints, TwistBeam } from '../../../src/linkage/index.ts'
import { type Fault, onAxle } from './fault.ts'
import { sides, type TrueAxle } from './true-axle.ts'

/** Faults of a solid axle or a twist beam. */
export function faultsOfWholeAxle(axle: TrueAxle): Fault[] {
  const drawn = axle.drawn as SolidAxlePoints | TwistBeam
  const list: Fault[] = []
  const steered = 'location' in drawn && drawn.steering !== null
  for (const side of sides) {
    list.push(
      onAxle(axle, { kind: 'bent axle or beam', side, at: null }, (state, size, luck) => {
        const way = luck.sign()
        // a steered beam takes its kingpin along; a housing or an arm takes the hub
        if (steered) {
          state.whole[side].pinCamber += way * size
          state.whole[side].pinCaster += luck.normal(0.3) * size
        } else {
          const lean = luck.between(-60, 60) * (Math.PI / 180)
          state.whole[side].camber += way * size * Math.cos(lean)
          state.whole[side].toe += size * Math.sin(lean)
        }
      }),
      // the load stands outside the bearing: the wheel's top comes in
      onAxle(axle, { kind: 'loose wheel bearing', side, at: null }, (state, size, luck) => {
        state.whole[side].camber -= size
        state.whole[side].toe += luck.normal(0.3) * size
      }),
    )
    if (steered)
      list.push(
        onAxle(axle, { kind: 'worn kingpin', side, at: 'knuckle-on-kingpin' }, (state, size) => {
          state.whole[side].camber -= size
        }),
        onAxle(axle, { kind: 'bent knuckle', side, at: null }, (state, size, luck) => {
          const lean = luck.between(-35, 35) * (Math.PI / 180)
          state.whole[side].camber += (luck.happens(0.6) ? 1 : -1) * size * Math.cos(lean)
          state.whole[side].toe += size * Math.sin(lean)
        }),
      )
  }
  if (steered)
    list.push(
      // one tie rod for both: bent, it is shorter
      onAxle(axle, { kind: 'bent steering arm or tie rod', side: null, at: null }, (state, size) => {
        state.tieRod -= size
      }),
      onAxle(axle, { kind: 'axle turned', side: null, at: null }, (state, size, luck) => {
        state.yaw += luck.sign() * size
      }),
      onAxle(axle, { kind: 'axle shifted', side: null, at: null }, (state, size, luck) => {
        state.shift[1] += luck.sign() * size
      }),
    )
  if (!('location' in drawn))
    list.push(
      onAxle(axle, { kind: 'axle turned', side: null, at: null }, (state, size, luck) => {
        state.yaw += luck.sign() * size
      }),
      onAxle(axle, { kind: 'axle shifted', side: null, at: null }, (state, size, luck) => {
        state.shift[0] += luck.sign() * size
      }),
      // one bush lets its end of the beam go back: the beam turns about the other one
      ...sides.map((side) =>
        onAxle(axle, { kind: 'collapsed bush', side, at: 'beam-pivot-bolt' }, (state, size) => {
          const turn = size / (2 * drawn.left.pivot[1])
          state.yaw += side === 'left' ? turn : -turn
        }),
      ),
    )
  if ('location' in drawn && drawn.location.kind === 'links') list.push(...faultsOfLinks(axle))
  return list
}

/** Links 0 and 1 are the lower ones, left and right; 2 the middle one, 3 the track bar. */
function faultsOfLinks(axle: TrueAxle): Fault[] {
  const half = 0.53
  const list: Fault[] = []
  for (const [i, side] of sides.entries()) {
    list.push(
      onAxle(axle, { kind: 'bent link', side, at: 'lower-link' }, (state, size) => {
        state.links[i]! -= size
      }),
      onAxle(axle, { kind: 'wrong part', side, at: 'lower-link' }, (state, size, luck) => {
        state.links[i]! += luck.sign() * size
      }),
    )
    // driven and braked: the rubber gives either way
    for (const id of ['lower-link-front-bolt', 'lower-link-rear-bolt'])
      list.push(
        onAxle(
          axle,
          { kind: 'collapsed bush', side, at: id },
          (state, size, luck) => {
            state.links[i]! += luck.sign() * size
          },
          0.2,
        ),
      )
  }
  list.push(
    onAxle(axle, { kind: 'axle turned', side: null, at: null }, (state, size, luck) => {
      const by = luck.sign() * size * half
      state.links[0] += by
      state.links[1] -= by
    }),
    onAxle(axle, { kind: 'axle shifted', side: null, at: null }, (state, size, luck) => {
      state.links[3] += luck.sign() * size
    }),
  )
  return list
}
