import type { Look, SeenCorner } from './look.ts'

type Way = { readonly partOff?: string | undefined; readonly jointOpen?: string | undefined }
const ground: readonly string[] = ['body', 'sub-frame']

/**
 * Joints that can never be reached because reaching them waits, over parts that must be off and joints that must
 * be open, for themselves. A part counts as off as soon as joints that can be opened part it, alone or with its
 * neighbours, from both parts that the joint in question holds.
 */
export function accessCircles({ file, say }: Look): void {
  const ids = Object.keys(file.joints ?? {})
  // What was told already could be anything.
  if (!ids.every((id) => file.joints![id]?.joins?.every((part) => part !== undefined))) return
  const waysOf = (id: string): readonly Way[] =>
    (file.joints?.[id]?.access ?? []).flatMap((way) => (way ? [way] : []))
  const open = new Set<string>()
  const isMet = (id: string, { partOff, jointOpen }: Way, piece: Piece) => {
    if (jointOpen !== undefined && !open.has(jointOpen)) return false
    if (partOff === undefined) return true
    return file.joints![id]!.joins!.every((part) => piece(part!) !== piece(partOff))
  }
  for (let grew = true; grew; ) {
    const piece = piecesOf(file, open)
    const now = ids.filter((id) => !open.has(id) && waysOf(id).every((way) => isMet(id, way, piece)))
    for (const id of now) open.add(id)
    grew = now.length > 0
  }
  const piece = piecesOf(file, open)
  const stuck = ids.filter((id) => !open.has(id))
  const blocked = (id: string) => waysOf(id).findIndex((way) => !isMet(id, way, piece))
  const told = new Set<string>()
  for (const start of stuck) {
    const round = circleFrom(start, (id) => waitsFor(file, { id, way: waysOf(id)[blocked(id)]!, stuck }))
    if (!round || round.some((id) => told.has(id))) continue
    for (const id of round) told.add(id)
    // A joint that waits for itself at once is told where its access is looked at.
    if (round.length > 1)
      say(
        ['joints', round[0]!, 'access', blocked(round[0]!)],
        `Nobody can ever reach it: ${[...round, round[0]!].map((id) => `"${id}"`).join(' waits for ')}.`,
        'conditions that do not lead back to where they start',
      )
  }
}

/** Which piece a part belongs to. */
type Piece = (part: string) => string

/** The pieces into which a corner falls when some of its joints are open. */
function piecesOf(file: SeenCorner, open: ReadonlySet<string>): Piece {
  const leader = new Map<string, string>()
  const piece = (part: string): string => {
    const over = leader.get(part)
    return over === undefined ? part : piece(over)
  }
  for (const [id, joint] of Object.entries(file.joints ?? {})) {
    if (open.has(id)) continue
    const [a, b] = [piece(joint!.joins![0]!), piece(joint!.joins![1]!)]
    if (a !== b) leader.set(a, b)
  }
  const vehicle = Object.entries(file.parts ?? {}).filter(([, part]) => ground.includes(part?.kind ?? ''))
  const ends = new Set(vehicle.map(([id]) => piece(id)))
  return (part) => (ends.has(piece(part)) ? 'the vehicle' : piece(part))
}

/** A stuck joint that a stuck joint waits for: the one it names, or one that holds the part it names. */
function waitsFor(
  file: SeenCorner,
  { id, way, stuck }: { readonly id: string; readonly way: Way; readonly stuck: readonly string[] },
): string | null {
  if (way.jointOpen !== undefined) return stuck.includes(way.jointOpen) ? way.jointOpen : null
  const holding = stuck.filter((other) => file.joints![other]!.joins!.includes(way.partOff!))
  return holding.find((other) => other !== id) ?? holding[0] ?? null
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
