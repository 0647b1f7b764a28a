import {
  adjustersOf,
  axleAdjustersOf,
  type Corner,
  cornerPoints,
  isWholeAxle,
  readCorner,
  startingLayout,
  startingLayouts,
  wholeAxlePoints,
} from '../../../src/corner/index.ts'
import { type Displacement, displaceable, mechanism, type Point } from '../../../src/linkage/index.ts'
import { metre } from '../../../src/quantity/index.ts'
import type { Chance } from './chance.ts'
import { scatter, shares } from './frequencies.ts'
import { type AxleState, asDrawn, sides, type TrueAxle } from './true-axle.ts'

const corners = new Map<string, Corner>()
for (const { id } of startingLayouts) {
  const read = readCorner(await startingLayout(id))
  if (!read.ok) throw new Error(`the starting layout ${id} cannot be read`)
  corners.set(id, read.value)
}

/** An axle of a layout as some maker drew it, and as this one was made. */
export function madeAxle(id: string, luck: Chance): { readonly axle: TrueAxle; readonly state: AxleState } {
  const typical = corners.get(id)!
  for (;;) {
    const points: Record<string, Corner['points'][string]> = {}
    for (const [name, point] of Object.entries(typical.points)) {
      const spread = point.spread ?? 0
      // what lies on the middle of the vehicle stays there
      const middle = point.at[1] === 0
      points[name] = {
        ...point,
        at: point.at.map((x, i) => x + (middle && i === 1 ? 0 : luck.normal(spread))) as unknown as Point,
      } as Corner['points'][string]
    }
    const model: Corner = {
      ...typical,
      points,
      wheel: {
        ...typical.wheel,
        camber: (typical.wheel.camber + luck.normal(scatter.designCamber)) as Corner['wheel']['camber'],
        toe: (typical.wheel.toe + luck.normal(scatter.designToe)) as Corner['wheel']['toe'],
      },
    }
    const drawn = isWholeAxle(model.layout) ? wholeAxlePoints(model) : cornerPoints(model)
    if ('layout' in drawn) {
      try {
        mechanism(drawn)
      } catch {
        continue
      }
    }
    const axle: TrueAxle = {
      end: typical.axle ?? 'front',
      corner: luck.happens(shares.fitted) ? fitted(model, luck) : typical,
      drawn,
      adjusters: adjustersOf(model),
      axleAdjusters: axleAdjustersOf(model),
    }
    return { axle, state: asMade(axle, luck) }
  }
}

/** Measured and fitted: near the model's own points, with a small spread. */
function fitted(model: Corner, luck: Chance): Corner {
  const points: Record<string, Corner['points'][string]> = {}
  for (const [name, point] of Object.entries(model.points))
    points[name] = {
      ...point,
      at: point.at.map((x, i) =>
        point.at[1] === 0 && i === 1 ? x : x + luck.normal(shares.fittedSpread),
      ) as unknown as Point,
      spread: metre(shares.fittedSpread),
    } as Corner['points'][string]
  return { ...model, points }
}

/** Names of what production may put elsewhere on a corner. */
export function madeNames(axle: TrueAxle): readonly (readonly ['body' | 'knuckle', string])[] {
  if (!('layout' in axle.drawn)) return []
  const { body, knuckle } = displaceable(axle.drawn)
  return [
    ...body.map((name) => ['body', name] as const),
    ...knuckle.filter((name) => name !== 'wheelCentre').map((name) => ['knuckle', name] as const),
  ]
}

/** How one axle came out of production: each point a little off, as links keep their lengths. */
function asMade(axle: TrueAxle, luck: Chance): AxleState {
  const state = asDrawn()
  const more = luck.world === 'other' ? 1.4 : 1
  for (const side of sides) {
    const by = { body: {} as Record<string, Point>, knuckle: {} as Record<string, Point> }
    for (const [where, name] of madeNames(axle))
      by[where][name] = [0, 1, 2].map(() => luck.normal(more * scatter.production)) as unknown as Point
    if ('layout' in axle.drawn) state.displaced[side].push(by satisfies Displacement)
    else {
      state.whole[side].camber = luck.normal(scatter.axleCamber)
      state.whole[side].toe = luck.normal(scatter.axleToe)
      state.whole[side].pinCaster = luck.normal(scatter.axleCamber)
      state.whole[side].pinCamber = luck.normal(scatter.axleCamber)
    }
  }
  state.links = [0, 1, 2, 3].map(() => luck.normal(scatter.production)) as AxleState['links']
  return state
}

/** Ids of the starting layouts of one end. */
export const layoutsOf = (end: 'front' | 'rear'): readonly string[] =>
  startingLayouts.filter(({ axle }) => axle === end).map(({ id }) => id)

export const endOf = (id: string): 'front' | 'rear' => startingLayouts.find((one) => one.id === id)!.axle
