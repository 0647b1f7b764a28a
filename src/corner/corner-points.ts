import type { AnyCornerPoints, FiveLink, Point } from '../linkage/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { Corner } from './corner-schema.ts'
import { familyOf, isWholeAxle } from './layouts.ts'
import type { CornerRefusal } from './parse-clock.ts'
import { pointNames } from './point-names.ts'
import { pointOf } from './point-of.ts'

/**
 * The points of a corner model as the linkage room takes them, for layouts that are computed corner by corner.
 * A rear corner has no rack; its tie rod or toe link stands still in the body.
 *
 * @throws {Refusal} `not-one-corner` for a twist beam or a solid axle (`wholeAxlePoints` has those); `no-such-point`
 *   when a corner that was made by hand lacks a point of its layout
 * @source definition
 */
export function cornerPoints(corner: Corner): AnyCornerPoints {
  if (isWholeAxle(corner.layout))
    throw new Refusal<CornerRefusal>({
      code: 'not-one-corner',
      at: 'layout',
      given: corner.layout,
      sentence: `“${corner.name}” has the layout “${corner.layout}”: one wheel of it cannot be computed without the other.`,
      remedy: 'Ask for the whole axle.',
    })
  const family = familyOf(corner.layout)
  const at: Record<string, Point> = {}
  for (const [name, inside] of Object.entries(pointNames[family])) at[inside] = pointOf(corner, name)
  const wheel = {
    wheelCentre: at.wheelCentre!,
    camber: corner.wheel.camber,
    toe: corner.wheel.toe,
    tyreRadius: corner.wheel.loadedRadius,
  }
  if (family !== 'five-link') {
    const { wheelCentre: _, ...rest } = at
    return { layout: family, ...wheel, ...rest } as AnyCornerPoints
  }
  const links = [0, 1, 2, 3, 4].map((i) => ({
    inner: at[`inner${i}`]!,
    outer: at[`outer${i}`]!,
    ...(corner.steeredLink === i + 1 ? { rack: true } : {}),
  }))
  return { layout: 'five-link', ...wheel, links: links as unknown as FiveLink['links'] }
}
