import { Refusal } from '../quantity/index.ts'
import { checkEyes, checkLift } from './check-hinge.ts'
import { designPoint, partsOf } from './layout-parts.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { AnyCornerPoints, Displacement, Point } from './points.ts'
import { sentenceStart } from './sentence-start.ts'
import { spokenPlace } from './spoken-place.ts'
import { cross, dot, minus, norm, unit } from './vector.ts'

/** Shorter than this is no length, m. */
const nothing = 1e-6
/** A lever or distance below this part of the length it belongs to is no lever. */
const noLever = 1e-6
/** No corner is larger than this, m; beyond it squares lose their meaning. */
const huge = 1e6

const no = (code: LinkageRefusal, at: string, sentence: string, remedy: string, given = ''): never => {
  throw new Refusal<LinkageRefusal>({ code, at, given, sentence, remedy })
}

/** Every number anywhere in the value is finite. @source definition */
export function checkFinite(value: unknown, at: string): void {
  if (typeof value === 'number' && !Number.isFinite(value))
    no(
      'not-finite',
      at,
      `${sentenceStart(spokenPlace(at))} is ${value}, which is not a number one can measure.`,
      'Enter the measured value.',
      String(value),
    )
  if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value)) checkFinite(inner, at === '' ? key : `${at}.${key}`)
}

/** `value` is three finite numbers of a believable size. */
function checkPoint(value: unknown, at: string): void {
  const right = Array.isArray(value) && value.length === 3 && value.every((n) => typeof n === 'number')
  if (!right)
    no(
      'bad-input',
      at,
      value === undefined
        ? `${sentenceStart(spokenPlace(at))} is missing.`
        : `${sentenceStart(spokenPlace(at))} is not three numbers.`,
      'Give x, y and z of this point in metres.',
      JSON.stringify(value) ?? 'nothing',
    )
  else if (value.some((n) => Math.abs(n) > huge))
    no(
      'bad-input',
      at,
      `${sentenceStart(spokenPlace(at))} lies more than ${huge} m away.`,
      'Give the coordinates in metres.',
    )
}

function checkNumber(value: unknown, at: string): void {
  if (typeof value !== 'number')
    no(
      'bad-input',
      at,
      `${sentenceStart(spokenPlace(at))} is not a number.`,
      'Give it as a number.',
      JSON.stringify(value) ?? 'nothing',
    )
}

/** Right names, right kinds, right counts. */
function checkShape(points: AnyCornerPoints): void {
  if (typeof points !== 'object' || points === null)
    no('bad-input', 'points', 'There are no points.', 'Give the points of the corner.')
  const parts = partsOf(points.layout)
  if (
    !Object.hasOwn(
      { 'double wishbone': 1, strut: 1, 'five-link': 1, 'semi-trailing arm': 1 },
      String(points.layout),
    )
  )
    no(
      'bad-input',
      'layout',
      `"${String(points.layout)}" is no layout that can be computed.`,
      'Choose double wishbone, strut, five-link or semi-trailing arm.',
      String(points.layout),
    )
  if (points.layout === 'five-link') {
    const links: unknown = points.links
    if (!Array.isArray(links) || links.length !== 5)
      no(
        'bad-input',
        'links',
        `A five-link corner has five links; ${Array.isArray(links) ? links.length : 'none'} given.`,
        'Give all five links.',
      )
    for (const [i, link] of points.links.entries()) {
      if (typeof link !== 'object' || link === null)
        no('bad-input', `links.${i}`, `Link ${i + 1} is missing.`, 'Give its inner and outer point.')
      if (link.rack !== undefined && typeof link.rack !== 'boolean')
        no(
          'bad-input',
          `links.${i}.rack`,
          `Whether the rack moves link ${i + 1} is not yes or no.`,
          'Give true or false.',
        )
    }
    if (points.links.filter((link) => link.rack).length > 1)
      no('bad-input', 'links', 'More than one link is moved by the rack.', 'Mark one link only.')
  }
  for (const name of [...parts.body, ...parts.knuckle]) checkPoint(designPoint(points, name), name)
  for (const name of ['camber', 'toe', 'tyreRadius'] as const) checkNumber(points[name], name)
  if (!(points.tyreRadius > 0 && points.tyreRadius < huge))
    no(
      'bad-input',
      'tyreRadius',
      `The tyre radius is ${points.tyreRadius} m.`,
      'Give the loaded radius, above 0.',
    )
  for (const name of ['camber', 'toe'] as const)
    if (Math.abs(points[name]) >= Math.PI / 2)
      no(
        'bad-input',
        name,
        `${sentenceStart(name)} is a right angle or more.`,
        'Give the angle of the wheel at design.',
      )
}

/** Names of a displacement exist in this layout, and its values are points or numbers. */
function checkDisplacement(points: AnyCornerPoints, by: Displacement): void {
  const parts = partsOf(points.layout)
  const known = { body: parts.body, knuckle: parts.knuckle, length: parts.legs.map((leg) => leg.name) }
  for (const group of ['body', 'knuckle', 'length'] as const)
    for (const [name, value] of Object.entries(by[group] ?? {})) {
      const at = `${group}.${name}`
      if (!known[group].includes(name))
        no(
          'bad-input',
          at,
          `A ${points.layout} corner has no ${group === 'length' ? 'link' : `point of the ${group}`} “${name}”.`,
          `Use one of: ${known[group].map(spokenPlace).join(', ')}.`,
        )
      if (group === 'length') checkNumber(value, at)
      else checkPoint(value, at)
    }
  if (by.spin !== undefined) checkPoint(by.spin, 'spin')
}

/** Where a named point lies at design, displaced. */
function placeOf(points: AnyCornerPoints, by: Displacement, name: string): Point {
  const [x, y, z] = designPoint(points, name)
  const [dx, dy, dz] = by.body?.[name] ?? by.knuckle?.[name] ?? [0, 0, 0]
  return [x + dx, y + dy, z + dz]
}

/** Links have a length, arms an axis and a radius. */
function checkLengths(points: AnyCornerPoints, by: Displacement): void {
  const parts = partsOf(points.layout)
  const at = (name: string): Point => placeOf(points, by, name)
  const hinged = points.layout === 'semi-trailing arm'
  const spoken = (name: string): string => (hinged ? 'trailing arm' : `${name} arm`)
  for (const leg of parts.legs) {
    const length = norm(minus(designPoint(points, leg.inner), designPoint(points, leg.outer)))
    if (Math.min(length, length + (by.length?.[leg.name] ?? 0)) < nothing)
      no(
        'zero-length-link',
        leg.name,
        `${sentenceStart(spokenPlace(leg.name))} has no length: ${spokenPlace(leg.inner)} and ${spokenPlace(leg.outer)} are one point.`,
        'Measure both ends again.',
      )
  }
  if (points.layout === 'strut' && norm(minus(at('strutTop'), at('strutLower'))) < nothing)
    no(
      'zero-length-link',
      'strutLower',
      'The strut has no direction: its lower point lies in the top mount.',
      'Give a point lower down on the strut.',
    )
  for (const arm of parts.arms)
    if (norm(minus(at(arm.frontInner), at(arm.rearInner))) < nothing)
      no(
        'coincident-pivots',
        arm.frontInner,
        `The ${spoken(arm.name)} has no axis: its two inner pivots are one point.`,
        'Measure the front and the rear pivot apart.',
      )
  if (parts.axis && norm(minus(at(parts.axis.upper), at(parts.axis.lower))) < nothing)
    no(
      'coincident-pivots',
      parts.axis.lower,
      'There is no steering axis: its upper and its lower end are one point.',
      'Measure the two ends apart.',
    )
  for (const arm of parts.arms) {
    const axis = unit(minus(at(arm.frontInner), at(arm.rearInner)))
    const out = minus(at(arm.outer), at(arm.rearInner))
    if (norm(cross(axis, out)) < Math.max(nothing, noLever * norm(out)))
      no(
        'degenerate',
        arm.outer,
        `The ${hinged ? 'wheel centre' : 'outer point'} of the ${spoken(arm.name)} lies on the arm's own inner axis, so the arm cannot move it.`,
        'Measure this point again.',
      )
  }
}

/** The tie rod has a lever about the steering axis. The rank of the whole is checked by `mechanism`. */
function checkLever(points: AnyCornerPoints): void {
  const { axis } = partsOf(points.layout)
  if (!axis || points.layout === 'five-link' || points.layout === 'semi-trailing arm') return
  const lower = designPoint(points, axis.lower)
  const k = minus(designPoint(points, axis.upper), lower)
  const rod = unit(minus(points.tieInner, points.tieOuter))
  const lever = Math.abs(dot(unit(k), cross(minus(points.tieOuter, lower), rod)))
  if (lever < noLever * norm(k))
    no(
      'singular',
      'tieOuter',
      `The tie rod has no lever about the steering axis (${(lever * 1000).toPrecision(2)} mm), so it cannot hold the wheel.`,
      'Measure both ends of the tie rod again.',
    )
}

/** All checks of a corner's points and of what displaces them, first fault in the order of the codes. */
export function checkPoints(points: AnyCornerPoints, by: Displacement): void {
  checkFinite(points, '')
  checkFinite(by, '')
  checkShape(points)
  checkDisplacement(points, by)
  checkLengths(points, {})
  checkLengths(points, by)
  if (points.layout === 'semi-trailing arm') checkEyes(points, by)
  checkLever(points)
  if (points.layout === 'semi-trailing arm') checkLift(points)
}

/** The checks of a displacement alone, for points that are known to be sound. */
export function checkDisplaced(points: AnyCornerPoints, by: Displacement): void {
  checkFinite(by, '')
  checkDisplacement(points, by)
  checkLengths(points, by)
  if (points.layout === 'semi-trailing arm') checkEyes(points, by)
}
