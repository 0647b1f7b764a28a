import { closestName } from './closest-name.ts'
import type { CornerFile } from './corner-schema.ts'
import { fieldPath } from './field-path.ts'
import { familyOf } from './layouts.ts'
import { linkBetween } from './link-between.ts'
import { neededPoints } from './needed-points.ts'
import { linkNames, pointNames } from './point-names.ts'
import type { Problem } from './reading.ts'
import type { Seen } from './seen.ts'

type File = NonNullable<Seen<CornerFile>>
type Path = readonly PropertyKey[]

/**
 * What is wrong between the members of a corner model: names that lead nowhere, points that the layout
 * lacks, parts that nothing holds, springs that nothing keeps in.
 *
 * @param file whatever is sound by itself
 * @source definition
 */
export function cornerRefers(file: File | undefined): readonly Problem[] {
  if (!file) return []
  const found: Problem[] = []
  const say = (path: Path, wrong: string, right: string) =>
    found.push({ field: fieldPath(path), wrong, right })
  const points = Object.keys(file.points ?? {})
  const parts = Object.keys(file.parts ?? {})
  const joints = Object.keys(file.joints ?? {})
  const adjusters = Object.keys(file.adjusters ?? {})
  const used = new Set<string>()

  const mustBe = (name: string | undefined, known: readonly string[], what: string, path: Path) => {
    if (name === undefined) return
    used.add(`${what} ${name}`)
    if (known.includes(name)) return
    const close = closestName(name, known)
    const list = known.map((n) => `"${n}"`).join(', ')
    say(
      path,
      `There is no ${what} "${name}".`,
      close ? `"${close}", if that is meant` : list ? `one of ${list}` : `a ${what} that is listed`,
    )
  }
  const each = (
    names: readonly (string | undefined)[] | undefined,
    known: readonly string[],
    what: string,
    path: Path,
  ) =>
    names?.forEach((name, i) => {
      mustBe(name, known, what, [...path, i])
    })

  needsPoints(file, points, used, say)

  for (const [id, part] of Object.entries(file.parts ?? {})) {
    const at = ['parts', id]
    if (!part) continue
    if ('links' in part)
      part.links?.forEach((link, i) => {
        each(link, points, 'point', [...at, 'links', i])
      })
    if ('between' in part) each(part.between, parts, 'part', [...at, 'between'])
    if ('ends' in part) each(part.ends, points, 'point', [...at, 'ends'])
    if ('clippedTo' in part) each(part.clippedTo, parts, 'part', [...at, 'clippedTo'])
  }

  for (const [id, joint] of Object.entries(file.joints ?? {})) {
    const at = ['joints', id]
    each(joint?.joins, parts, 'part', [...at, 'joins'])
    if (joint?.joins?.[0] !== undefined && joint.joins[0] === joint.joins[1])
      say([...at, 'joins'], `It joins "${joint.joins[0]}" to itself.`, 'two different parts')
    mustBe(joint?.at, points, 'point', [...at, 'at'])
    mustBe(joint?.adjuster, adjusters, 'adjuster', [...at, 'adjuster'])
    if (joint?.bush && joint.at === undefined)
      say([...at, 'at'], 'A bush turns about a point, and none is named.', 'the pivot that it stands in')
    joint?.access?.forEach((way, i) => {
      mustBe(way?.partOff, parts, 'part', [...at, 'access', i, 'partOff'])
      if (way && [way.partOff, way.steering, way.station].filter((x) => x !== undefined).length !== 1)
        say(
          [...at, 'access', i],
          'It names no condition, or more than one.',
          'one of "partOff", "steering", "station"',
        )
    })
    const adjuster = joint?.adjuster === undefined ? undefined : file.adjusters?.[joint.adjuster]
    if (
      adjuster?.kind === 'eccentric' &&
      joint?.at &&
      points.includes(joint.at) &&
      adjuster.moves &&
      adjuster.moves !== joint.at
    )
      say(
        [...at, 'adjuster'],
        `It sits at "${joint.at}", but adjuster "${joint.adjuster}" moves "${adjuster.moves}".`,
        'the adjuster that moves this point',
      )
  }

  checkAdjusters(file, points, mustBe, say)
  checkHolding(file, { parts, joints, used }, { mustBe, say })

  if (isWhole(file)) checkUse({ points, adjusters, used }, say)
  return found
}

type Say = (path: Path, wrong: string, right: string) => void
type MustBe = (name: string | undefined, known: readonly string[], what: string, path: Path) => void

/** Whether nothing was taken out that could have used a name. */
const isWhole = (file: File): boolean =>
  file.layout !== undefined &&
  [file.parts, file.joints, file.adjusters].every((list) => list && Object.values(list).every(Boolean))

function checkUse(
  { points, adjusters, used }: { points: readonly string[]; adjusters: readonly string[]; used: Set<string> },
  say: Say,
): void {
  for (const name of points)
    if (!used.has(`point ${name}`))
      say(
        ['points', name],
        'Nothing uses this point.',
        'a joint, part or adjuster that names it; else leave it out',
      )
  for (const name of adjusters)
    if (!used.has(`adjuster ${name}`))
      say(
        ['adjusters', name],
        'No joint names this adjuster.',
        'a joint with this adjuster, the one that is loosened to turn it',
      )
}

function needsPoints(file: File, points: readonly string[], used: Set<string>, say: Say): void {
  const needed = file.layout === undefined ? [] : neededPoints(file.layout, file.axle, points)
  for (const name of needed) {
    used.add(`point ${name}`)
    if (!points.includes(name))
      say(['points', name], 'It is missing.', `this point: a corner with the layout "${file.layout}" has it`)
  }
  if (file.layout === 'five-link' && file.axle === 'front' && file.steeredLink === undefined)
    say(['steeredLink'], 'It is missing.', 'the number of the link that the steering moves, 1 to 5')
  if (file.layout !== undefined && file.layout !== 'five-link' && file.steeredLink !== undefined)
    say(['steeredLink'], 'Only a five-link corner has numbered links.', 'nothing here')
}

function checkAdjusters(file: File, points: readonly string[], mustBe: MustBe, say: Say): void {
  const family = file.layout === undefined ? null : familyOf(file.layout)
  const bodyPoint = (name: string | undefined, path: Path) => {
    mustBe(name, points, 'point', path)
    if (!family || name === undefined || !points.includes(name)) return
    const known = pointNames[family][name]
    if (known === undefined || /outer|Outer|strutLower|wheelCentre/.test(known))
      say(
        path,
        `"${name}" is no point of the linkage that stands in the body.`,
        'an inner pivot or the strut’s top',
      )
  }
  for (const [id, adjuster] of Object.entries(file.adjusters ?? {})) {
    const at = ['adjusters', id]
    if (!adjuster) continue
    if (adjuster.kind === 'eccentric') bodyPoint(adjuster.moves, [...at, 'moves'])
    if (adjuster.kind === 'shims')
      adjuster.moves?.forEach((name, i) => {
        bodyPoint(name, [...at, 'moves', i])
      })
    if (adjuster.kind === 'thread') {
      const [from, to] = adjuster.between ?? []
      mustBe(from, points, 'point', [...at, 'between', 0])
      mustBe(to, points, 'point', [...at, 'between', 1])
      if (family && from && to && !linkBetween(family, from, to))
        say(
          [...at, 'between'],
          `No link runs between "${from}" and "${to}".`,
          `one of ${linkNames[family].map(([a, b]) => `["${a}", "${b}"]`).join(', ')}`,
        )
    }
    if (adjuster.kind === 'slotted bolt') mustBe(adjuster.pivot, points, 'point', [...at, 'pivot'])
    const [member, direction] =
      'axis' in adjuster
        ? ['axis', adjuster.axis]
        : ['along', 'along' in adjuster ? adjuster.along : undefined]
    if (Array.isArray(direction) && direction.every((x) => x === 0))
      say(
        [...at, String(member)],
        'The direction has no length.',
        'three numbers that are not all 0, such as [0, 1, 0]',
      )
  }
}

function checkHolding(
  file: File,
  { parts, joints, used }: { parts: readonly string[]; joints: readonly string[]; used: Set<string> },
  { mustBe, say }: { mustBe: MustBe; say: Say },
): void {
  for (const [id, hold] of Object.entries(file.holds ?? {})) {
    const part = file.parts?.[id]
    if (!parts.includes(id)) mustBe(id, parts, 'part', ['holds', id])
    else if (part && !('stores' in part && part.stores))
      say(['holds', id], `"${id}" stores no energy.`, 'a spring, or a strut with "stores"')
    hold?.heldBy?.forEach((set, i) => {
      set?.forEach((joint, j) => {
        mustBe(joint, joints, 'joint', ['holds', id, 'heldBy', i, j])
      })
    })
  }
  for (const [id, part] of Object.entries(file.parts ?? {})) {
    if (!part) continue
    if ('stores' in part && part.stores && !Object.hasOwn(file.holds ?? {}, id))
      say(
        ['holds', id],
        `Nothing is said to hold "${id}", which stores energy.`,
        'the sets of joints that keep it in, under "heldBy"',
      )
    const stands = part.kind === 'body' || 'between' in part || 'clippedTo' in part
    if (!stands && !used.has(`part ${id}`))
      say(
        ['parts', id],
        'Nothing holds this part.',
        'a joint that joins it to another part; else leave it out',
      )
    const carrier = springCarrier(file.layout)
    if (part.kind === 'spring' && carrier && part.between && !part.between.includes(carrier))
      say(
        ['parts', id, 'between'],
        `The layout says "${file.layout}", but this spring does not act on "${carrier}".`,
        `"${carrier}" as one of the two parts, or the layout that is true`,
      )
  }
}

function springCarrier(layout: File['layout']): string | null {
  if (layout === 'double-wishbone, coil on lower arm') return 'lower-arm'
  if (layout === 'double-wishbone, coil on upper arm') return 'upper-arm'
  return null
}
