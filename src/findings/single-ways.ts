import type { WholeWay } from './axle-model.ts'

/** One thing that may be different about a whole axle, by its name; and how far a way goes along it. */
export interface SingleWay {
  readonly name: string
  readonly way: WholeWay
  readonly times: number
}

const sides = ['left', 'right'] as const

/** A way of a whole axle as single things that differ: rates add up. @source definition */
export function singleWays({
  tieRod,
  dragLink,
  links,
  tilt,
  shim,
  yaw,
  shift,
}: WholeWay): readonly SingleWay[] {
  const list: SingleWay[] = []
  const put = (name: string, times: number | undefined, way: WholeWay): void => {
    if (times) list.push({ name, way, times })
  }
  put('tie rod', tieRod, { tieRod: 1 })
  put('drag link', dragLink, { dragLink: 1 })
  links?.forEach((by, i) => {
    put(`link ${i}`, by, {
      links: [0, 1, 2, 3].map((k) => (k === i ? 1 : 0)) as [number, number, number, number],
    })
  })
  for (const side of sides) {
    put(`tilt ${side}, camber`, tilt?.[side]?.camber, { tilt: { [side]: { camber: 1, caster: 0 } } })
    put(`tilt ${side}, caster`, tilt?.[side]?.caster, { tilt: { [side]: { camber: 0, caster: 1 } } })
    put(`shim ${side}, camber`, shim?.[side]?.camber, { shim: { [side]: { camber: 1, toe: 0 } } })
    put(`shim ${side}, toe`, shim?.[side]?.toe, { shim: { [side]: { camber: 0, toe: 1 } } })
  }
  put('yaw', yaw, { yaw: 1 })
  put('shift x', shift?.[0], { shift: [1, 0, 0] })
  put('shift y', shift?.[1], { shift: [0, 1, 0] })
  put('shift z', shift?.[2], { shift: [0, 0, 1] })
  return list
}
