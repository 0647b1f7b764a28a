import type { Adjuster } from '../adjust/index.ts'
import type { Point } from '../linkage/index.ts'
import { metre, rad, turn } from '../quantity/index.ts'
import type { Corner } from './corner-schema.ts'
import { familyOf } from './layouts.ts'
import { linkBetween } from './link-between.ts'
import { pointNames } from './point-names.ts'

/**
 * The adjusters of a corner model as the adjust room takes them: names of points and links are the linkage
 * room's, directions have length 1, a play that is not given is 0.
 *
 * @source definition
 */
export function adjustersOf(corner: Corner): readonly Adjuster[] {
  return Object.entries(corner.adjusters).flatMap(([id, adjuster]) => adjusterOf(corner, id, adjuster))
}

function adjusterOf(corner: Corner, id: string, a: Corner['adjusters'][string]): Adjuster | readonly [] {
  const family = familyOf(corner.layout)
  const inside = (name: string) => pointNames[family][name] ?? name
  const common = { id, name: a.name, ...(a.sets === undefined ? {} : { sets: a.sets }) }
  switch (a.kind) {
    case 'eccentric':
      return {
        ...common,
        kind: a.kind,
        moves: inside(a.moves),
        along: unit(a.along),
        throw: a.throw,
        range: a.range,
        step: a.step,
        play: a.play ?? rad(0),
        seenFrom: a.seenFrom,
        positiveLooks: a.positiveLooks,
        markAt: a.markAt,
        ...(a.fitted === undefined ? {} : { fitted: a.fitted }),
      }
    case 'shims':
      return {
        ...common,
        kind: a.kind,
        moves: a.moves.map(inside),
        along: unit(a.along),
        sizes: a.sizes,
        range: a.range,
        step: a.step,
        play: a.play ?? metre(0),
        ...(a.asDrawn === undefined ? {} : { asDrawn: a.asDrawn }),
      }
    case 'thread':
      return {
        ...common,
        kind: a.kind,
        length: linkBetween(family, a.between[0], a.between[1]) ?? 'tie',
        pitch: a.pitch,
        sleeve: a.sleeve,
        range: a.range,
        step: a.step,
        play: a.play ?? turn(0),
        seenFrom: a.seenFrom,
        positiveLooks: a.positiveLooks,
        ...(a.rightSide === undefined ? {} : { rightSide: a.rightSide }),
      }
    case 'slotted bolt':
      return {
        ...common,
        kind: a.kind,
        turns: a.turns,
        pivot: corner.points[a.pivot]!.at,
        axis: unit(a.axis),
        boltSpacing: a.boltSpacing,
        range: a.range,
        step: a.step,
        play: a.play ?? metre(0),
        seenFrom: a.seenFrom,
      }
    default:
      // The adjust room does not have these kinds yet.
      return []
  }
}

function unit(direction: readonly [number, number, number]): Point {
  const length = Math.hypot(...direction)
  return [direction[0] / length, direction[1] / length, direction[2] / length]
}
