import type { Adjuster } from '../adjust/index.ts'
import type { Point } from '../linkage/index.ts'
import { metre, rad, turn } from '../quantity/index.ts'
import type { Corner } from './corner-schema.ts'
import { familyOf } from './layouts.ts'
import { linkBetween } from './link-between.ts'
import { pointNames } from './point-names.ts'

type InFile = Corner['adjusters'][string]

/**
 * An adjuster of a corner model as the adjust room takes it: names of points and links are the linkage room's,
 * directions have length 1, a play that is not given is 0.
 *
 * @source definition
 */
export function adjusterIn(corner: Corner, id: string, a: InFile): Adjuster {
  const family = familyOf(corner.layout)
  const inside = (name: string) => pointNames[family][name] ?? name
  const common = { id, name: a.name, ...(a.sets === undefined ? {} : { sets: a.sets }) }
  switch (a.kind) {
    case 'eccentric':
      return {
        ...common,
        ...turned(a),
        kind: a.kind,
        moves: inside(a.moves),
        along: unit(a.along),
        throw: a.throw,
        ...(a.fitted === undefined ? {} : { fitted: a.fitted }),
      }
    case 'offset sleeve':
      return { ...common, ...turned(a), kind: a.kind, tilt: a.tilt }
    case 'shims':
      return {
        ...common,
        ...slid(a),
        kind: a.kind,
        moves: a.moves.map(inside),
        along: unit(a.along),
        sizes: a.sizes,
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
        ...slid(a),
        kind: a.kind,
        turns: a.turns,
        pivot: corner.points[a.pivot]!.at,
        axis: unit(a.axis),
        boltSpacing: a.boltSpacing,
        seenFrom: a.seenFrom,
      }
    case 'slide':
      return {
        ...common,
        ...slid(a),
        kind: a.kind,
        moves: a.moves.map(inside),
        along: unit(a.along),
        seenFrom: a.seenFrom,
      }
    case 'top plate':
      return {
        ...common,
        ...slid(a),
        kind: a.kind,
        moves: inside(a.moves),
        along: unit(a.along),
        seenFrom: a.seenFrom,
      }
    case 'wedge':
      return {
        ...common,
        kind: a.kind,
        tilts: a.tilts,
        sizes: a.sizes,
        range: a.range,
        step: a.step,
        play: rad(0),
        seenFrom: a.seenFrom,
        ...(a.asDrawn === undefined ? {} : { asDrawn: a.asDrawn }),
      }
    case 'sub-frame shift':
      return {
        ...common,
        ...slid(a),
        kind: a.kind,
        along: a.along,
        moves: a.moves.map(inside),
        seenFrom: a.seenFrom,
      }
  }
}

/** What is set by turning: a washer, a sleeve. */
const turned = (a: Extract<InFile, { kind: 'eccentric' | 'offset sleeve' }>) => ({
  range: a.range,
  step: a.step,
  play: a.play ?? rad(0),
  seenFrom: a.seenFrom,
  positiveLooks: a.positiveLooks,
  markAt: a.markAt,
})

/** What is set by a length. */
const slid = (a: Exclude<InFile, { kind: 'eccentric' | 'offset sleeve' | 'thread' | 'wedge' }>) => ({
  range: a.range,
  step: a.step,
  play: a.play ?? metre(0),
})

function unit(direction: readonly [number, number, number]): Point {
  const length = Math.hypot(...direction)
  return [direction[0] / length, direction[1] / length, direction[2] / length]
}
