import type { Look, SeenCorner } from './look.ts'

type File = SeenCorner
type Way = { readonly partOff?: string | undefined; readonly jointOpen?: string | undefined }
const ground: readonly string[] = ['body', 'sub-frame']

/**
 * Joints that can never be reached because reaching them waits, over parts that must be off and joints that must
 * be open, for themselves. A part counts as removable as soon as some set of joints that can be opened parts it,
 * alone or with its neighbours, from the body.
 */
export function accessCircles({ file, say }: Look): void {
  const joints = Object.entries(file.joints ?? {})
  const waysOf = (id: string): readonly Way[] =>
    (file.joints?.[id]?.access ?? []).flatMap((way) => (way ? [way] : []))
  const open = new Set<string>()
  for (let grew = true; grew; ) {
    grew = false
    const fixed = fixedParts(file, open)
    for (const [id] of joints) {
      const free = ({ partOff, jointOpen }: Way) =>
        (partOff === undefined || !fixed.has(partOff)) && (jointOpen === undefined || open.has(jointOpen))
      if (open.has(id) || !waysOf(id).every(free)) continue
      open.add(id)
      grew = true
    }
  }
  const stuck = joints.map(([id]) => id).filter((id) => !open.has(id))
  const fixed = fixedParts(file, open)
  const told = new Set<string>()
  for (const start of stuck) {
    const round = circleFrom(start, (id) => next(file, { id, ways: waysOf(id), stuck, fixed }))
    if (!round || round.some((id) => told.has(id))) continue
    for (const id of round) told.add(id)
    const at = waysOf(round[0]!).findIndex(
      ({ partOff, jointOpen }) =>
        (partOff !== undefined && fixed.has(partOff)) || (jointOpen !== undefined && !open.has(jointOpen)),
    )
    // A joint that names itself, or a part of its own, is told there.
    if (round.length > 1)
      say(
        ['joints', round[0]!, 'access', at],
        `Nobody can ever reach it: ${[...round, round[0]!].map((id) => `"${id}"`).join(' waits for ')}.`,
        'conditions that do not lead back to where they start',
      )
  }
}

/** Parts that joints which cannot be opened keep on the body. */
function fixedParts(file: File, open: ReadonlySet<string>): ReadonlySet<string> {
  const fixed = new Set(
    Object.entries(file.parts ?? {}).flatMap(([id, part]) => (ground.includes(part?.kind ?? '') ? [id] : [])),
  )
  for (let grew = true; grew; ) {
    grew = false
    for (const [id, joint] of Object.entries(file.joints ?? {})) {
      const [a, b] = joint?.joins ?? []
      if (open.has(id) || a === undefined || b === undefined || fixed.has(a) === fixed.has(b)) continue
      fixed.add(a).add(b)
      grew = true
    }
  }
  return fixed
}

/** A stuck joint that a stuck joint waits for. */
function next(
  file: File,
  {
    id,
    ways,
    stuck,
    fixed,
  }: {
    readonly id: string
    readonly ways: readonly Way[]
    readonly stuck: readonly string[]
    readonly fixed: ReadonlySet<string>
  },
): string | null {
  for (const { partOff, jointOpen } of ways) {
    if (jointOpen !== undefined && stuck.includes(jointOpen)) return jointOpen
    if (partOff === undefined || !fixed.has(partOff)) continue
    const holding = stuck.filter((other) => file.joints?.[other]?.joins?.includes(partOff))
    const other = holding.find((name) => name !== id) ?? holding[0]
    if (other !== undefined) return other
  }
  return null
}

function circleFrom(start: string, step: (id: string) => string | null): readonly string[] | null {
  const walked: string[] = []
  for (let id: string | null = start; id !== null; id = step(id)) {
    const seen = walked.indexOf(id)
    if (seen >= 0) return walked.slice(seen)
    walked.push(id)
  }
  return null
}
