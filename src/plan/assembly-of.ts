import type { Corner } from '../corner/index.ts'
import { jointLetters } from '../corner/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { AdjusterNode, Assembly, HoldNode, JointNode, PartNode, Side } from './assembly.ts'
import { holdsOnVehicle } from './holds-on-vehicle.ts'
import { impliedJoints } from './implied-joints.ts'
import { isLocating } from './is-locating.ts'
import { isRedJoint } from './is-red-joint.ts'
import { isSteeringJoint } from './is-steering-joint.ts'
import { placeOfJoint } from './place-of-joint.ts'
import type { PlanRefusal } from './plan-refusal.ts'

/** Adjusters that are moved with their bolt nipped up; a shim, a wedge or a sleeve is changed by taking it apart. */
const movable: readonly string[] = [
  'eccentric',
  'slotted bolt',
  'thread',
  'slide',
  'top plate',
  'sub-frame shift',
]
const sides: readonly Side[] = ['left', 'right']
/** An axle has these once, whether a file says so or not. */
const once: readonly PartNode['kind'][] = [
  'sub-frame',
  'rack',
  'bar',
  'axle beam',
  'steering box',
  'drop arm',
  'idler arm',
  'centre link',
  'steering shaft',
  'compensator',
]

/**
 * The parts and joints of one or two axles as they stand on the vehicle: what a corner model draws once on the left
 * stands on both sides, what the axle has once stands once, and there is one body. Springs, hoses and leads that a
 * file clips to a part without a joint of their own get that joint.
 *
 * @param corners one corner model per axle
 * @throws {Refusal} `two-of-one-axle`
 * @source own derivation: docs/methods/plan.md
 */
export function assemblyOf(corners: readonly Corner[]): Assembly {
  const axles = corners.map(({ axle }) => axle)
  const twice = axles.find((axle, i) => axles.indexOf(axle) !== i)
  if (twice)
    throw new Refusal<PlanRefusal>({
      code: 'two-of-one-axle',
      at: 'corners',
      given: twice,
      sentence: `Two corner models are both of the ${twice} axle.`,
      remedy: 'Give one corner model per axle.',
    })
  const parts: Record<string, PartNode> = {}
  const joints: Record<string, JointNode> = {}
  const holds: Record<string, HoldNode> = {}
  const adjusters: Record<string, AdjusterNode> = {}
  const touching: Record<string, string[]> = {}
  for (const corner of corners) {
    const prefix = corners.length > 1 ? `${corner.axle} ` : ''
    Object.assign(parts, partsOn(corner, prefix))
    const here = jointsOn(corner, prefix, parts)
    for (const { id, joins } of Object.values(here))
      for (const part of joins) touching[part] = [...(touching[part] ?? []), id]
    Object.assign(joints, here)
    Object.assign(holds, holdsOnVehicle(corner, parts, joints))
    Object.assign(adjusters, adjustersOn(corner, prefix, joints))
  }
  for (const joint of Object.values(joints))
    joints[joint.id] = {
      ...joint,
      locates: isLocating({ parts, joints, touching }, joint),
      steers: isSteeringJoint({ parts, joints, touching }, joint),
    }
  return {
    axles,
    parts,
    joints,
    holds,
    adjusters,
    touching,
    corners: Object.fromEntries(corners.map((corner) => [corner.axle, corner])),
  }
}

const isOnce = (part: Corner['parts'][string]) => once.includes(part.kind) || part.span === 'axle'

/** The id of a part on a side: where the axle has it once, the side does not matter. */
function partId(corner: Corner, name: string, side: Side | null): string {
  const part = corner.parts[name]
  if (part?.kind === 'body') return 'body'
  if (part === undefined || isOnce(part) || side === null) return `${corner.axle} ${name}`
  return `${corner.axle} ${side} ${name}`
}

const told = (name: string) => name.replaceAll('-', ' ')

function partsOn(corner: Corner, prefix: string): Record<string, PartNode> {
  const { axle } = corner
  const found: Record<string, PartNode> = {}
  for (const [name, file] of Object.entries(corner.parts)) {
    const words = file.name ?? told(name)
    if (file.kind === 'body')
      found['body'] = { id: 'body', name, called: words, kind: file.kind, axle: null, side: null, file }
    else
      for (const side of isOnce(file) ? [null] : sides) {
        const id = partId(corner, name, side)
        const called = `${prefix}${side ? `${side} ` : ''}${words}`
        found[id] = { id, name, called, kind: file.kind, axle, side, file }
      }
  }
  return found
}

function jointsOn(
  corner: Corner,
  prefix: string,
  parts: Readonly<Record<string, PartNode>>,
): Record<string, JointNode> {
  const { axle } = corner
  const letters: Readonly<Record<string, string>> = Object.fromEntries(
    Object.entries(jointLetters(corner)).map(([joint, letter]) => [joint, String(letter)]),
  )
  const found: Record<string, JointNode> = {}
  for (const [name, file] of Object.entries({ ...corner.joints, ...impliedJoints(corner) })) {
    const perSide = file.joins.some((part) => {
      const node = corner.parts[part]
      return node !== undefined && node.kind !== 'body' && !isOnce(node)
    })
    const where: readonly (Side | null)[] = file.side ? [file.side] : perSide ? sides : [null]
    for (const side of where) {
      const id = side && !file.side ? `${axle} ${side} ${name}` : `${axle} ${name}`
      const joins = file.joins.map((part) => partId(corner, part, side)) as [string, string]
      if (joins.some((part) => parts[part] === undefined)) continue
      const words = file.name ?? told(name)
      found[id] = {
        id,
        name,
        called: `${prefix}${side ? `${side} ` : ''}${words}`,
        kind: file.kind,
        joins,
        axle,
        side,
        file,
        letter: letters[name] ?? null,
        red: file.red ?? isRedJoint(file.kind),
        final: finalOf(file),
        place: placeOfJoint(corner, file),
        locates: false,
        steers: false,
        adjusts: file.adjuster !== undefined && movable.includes(corner.adjusters[file.adjuster]?.kind ?? ''),
      }
    }
  }
  return found
}

/** A bonded bush is final at ride height whatever a file says, unless it is a rod's end. */
function finalOf(joint: Corner['joints'][string]): JointNode['final'] {
  if (joint.kind === 'wheel nuts') return 'on the ground'
  if (joint.kind === 'axle nut') return joint.cracked === 'on the ground' ? 'on the ground' : 'any position'
  if (joint.bush?.bonded && joint.final !== 'wheels straight') return 'at ride height'
  return joint.final ?? 'any position'
}

function adjustersOn(
  corner: Corner,
  prefix: string,
  joints: Readonly<Record<string, JointNode>>,
): Record<string, AdjusterNode> {
  const { axle } = corner
  const found: Record<string, AdjusterNode> = {}
  for (const [name, file] of Object.entries(corner.adjusters)) {
    const spans = ('span' in file && file.span === 'axle') || file.kind === 'sub-frame shift'
    for (const side of spans ? [null] : sides) {
      const id = side ? `${axle} ${side} ${name}` : `${axle} ${name}`
      const held = Object.values(joints).filter(
        (joint) => joint.axle === axle && joint.file.adjuster === name && (spans || joint.side === side),
      )
      found[id] = {
        id,
        called: `${prefix}${side ? `${side} ` : ''}${file.name}`,
        axle,
        side,
        sets: setsToe(file) ? 'toe' : 'camber and caster',
        joints: held.map((joint) => joint.id),
      }
    }
  }
  return found
}

function setsToe(adjuster: Corner['adjusters'][string]): boolean {
  if (adjuster.sets) return adjuster.sets === 'toe'
  if (adjuster.kind === 'wedge') return adjuster.tilts === 'toe'
  return adjuster.kind === 'thread'
}
