import type { CornerPoints, FiveLink, Point } from '../linkage/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { Corner } from './corner-schema.ts'
import { familyOf } from './layouts.ts'
import type { CornerRefusal } from './parse-clock.ts'
import { pointNames } from './point-names.ts'

/**
 * The points of a corner model as the linkage room takes them. A rear corner has no rack; its tie rod or
 * toe link stands still in the body.
 *
 * @throws {Refusal} `no-such-point` when a corner that was made by hand lacks a point of its layout
 * @source definition
 */
export function cornerPoints(corner: Corner): CornerPoints {
  const family = familyOf(corner.layout)
  const at: Record<string, Point> = {}
  for (const [name, inside] of Object.entries(pointNames[family])) {
    const point = corner.points[name]
    if (!point)
      throw new Refusal<CornerRefusal>({
        code: 'no-such-point',
        at: `points.${name}`,
        sentence: `The corner model "${corner.name}" has no point "${name}", which its layout needs.`,
        remedy: 'Add the point to the model, measured or typical with a spread.',
      })
    at[inside] = point.at
  }
  const wheel = {
    wheelCentre: at.wheelCentre!,
    camber: corner.wheel.camber,
    toe: corner.wheel.toe,
    tyreRadius: corner.wheel.loadedRadius,
  }
  if (family !== 'five-link') {
    const { wheelCentre: _, ...rest } = at
    return { layout: family, ...wheel, ...rest } as CornerPoints
  }
  const links = [0, 1, 2, 3, 4].map((i) => ({
    inner: at[`inner${i}`]!,
    outer: at[`outer${i}`]!,
    ...(corner.steeredLink === i + 1 ? { rack: true } : {}),
  }))
  return { layout: 'five-link', ...wheel, links: links as unknown as FiveLink['links'] }
}
