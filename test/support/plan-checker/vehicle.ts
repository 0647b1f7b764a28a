import type { Corner } from '../../../src/corner/index.ts'

type PartFile = Corner['parts'][string]
type JointFile = Corner['joints'][string]
type AdjusterFile = Corner['adjusters'][string]
type Axle = Corner['axle']

/** A part as it stands on the vehicle. */
export interface Part {
  readonly id: string
  readonly name: string
  readonly kind: PartFile['kind']
  readonly axle: Axle | null
  readonly side: 'left' | 'right' | null
  readonly file: PartFile
}

/** A joint as it stands on the vehicle. */
export interface Tie {
  readonly id: string
  readonly name: string
  readonly kind: JointFile['kind']
  readonly ends: readonly [string, string]
  readonly axle: Axle
  readonly side: 'left' | 'right' | null
  readonly file: JointFile
}

/** Stored energy: the lists that each hold by themselves, what ends the droop, the pivots of the arm it stands on. */
export interface Store {
  readonly id: string
  readonly axle: Axle
  readonly side: 'left' | 'right' | null
  readonly stores: string
  readonly lists: readonly (readonly string[])[]
  readonly all: readonly string[]
  readonly arm: readonly string[]
  readonly pivots: readonly string[]
  readonly onAxleStands: boolean
}

/** An adjuster: what it sets, whether it is turned or slid with its bolt nipped up, the joints that hold it. */
interface Setter {
  readonly id: string
  readonly axle: Axle
  readonly side: 'left' | 'right' | null
  readonly toe: boolean
  readonly slides: boolean
  readonly ties: readonly string[]
}

/** The vehicle as the checker sees it, made from the corner models alone. */
export interface Vehicle {
  readonly axles: readonly Axle[]
  readonly parts: ReadonlyMap<string, Part>
  readonly ties: ReadonlyMap<string, Tie>
  readonly stores: readonly Store[]
  readonly setters: readonly Setter[]
  readonly tiesOf: (part: string) => readonly Tie[]
  readonly airSprung: boolean
}

const once = new Set([
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
])
const slides = new Set(['eccentric', 'slotted bolt', 'thread', 'slide', 'top plate', 'sub-frame shift'])
const fixed = (kind: string | undefined) => kind === 'body' || kind === 'sub-frame'
const bothSides = ['left', 'right'] as const

/** Puts the corner models together: what is drawn once on the left stands left and right. */
export function vehicleOf(corners: readonly Corner[]): Vehicle {
  const parts = new Map<string, Part>()
  const ties = new Map<string, Tie>()
  const stores: Store[] = []
  const setters: Setter[] = []
  for (const corner of corners) {
    const { axle } = corner
    const isOnce = (file: PartFile) => file.kind === 'body' || once.has(file.kind) || file.span === 'axle'
    const idOf = (name: string, side: Part['side']) => {
      const file = corner.parts[name]!
      if (file.kind === 'body') return 'body'
      return isOnce(file) || !side ? `${axle} ${name}` : `${axle} ${side} ${name}`
    }
    for (const [name, file] of Object.entries(corner.parts))
      for (const side of isOnce(file) ? [null] : bothSides) {
        const id = idOf(name, side)
        const own = file.kind === 'body' ? null : axle
        parts.set(id, { id, name, kind: file.kind, axle: own, side, file })
      }
    for (const [name, file] of Object.entries({ ...corner.joints, ...unwritten(corner) })) {
      const twice = file.joins.some((part) => !isOnce(corner.parts[part]!))
      for (const side of file.side ? [file.side] : twice ? bothSides : [null]) {
        const id = file.side || !side ? `${axle} ${name}` : `${axle} ${side} ${name}`
        const ends = [idOf(file.joins[0], side), idOf(file.joins[1], side)] as const
        ties.set(id, { id, name, kind: file.kind, ends, axle, side, file })
      }
    }
    stores.push(...storesOf(corner, parts, ties))
    for (const [name, file] of Object.entries(corner.adjusters)) {
      const whole = ('span' in file && file.span === 'axle') || file.kind === 'sub-frame shift'
      for (const side of whole ? [null] : bothSides) {
        const held = [...ties.values()].filter(
          (tie) => tie.axle === axle && tie.file.adjuster === name && (whole || tie.side === side),
        )
        setters.push({
          id: side ? `${axle} ${side} ${name}` : `${axle} ${name}`,
          axle,
          side,
          toe: isToe(file),
          slides: slides.has(file.kind),
          ties: held.map(({ id }) => id),
        })
      }
    }
  }
  const byPart = new Map<string, Tie[]>()
  for (const tie of ties.values())
    for (const end of tie.ends) byPart.set(end, [...(byPart.get(end) ?? []), tie])
  return {
    axles: corners.map(({ axle }) => axle),
    parts,
    ties,
    stores,
    setters,
    tiesOf: (part) => byPart.get(part) ?? [],
    airSprung: corners.some(({ airSprung }) => airSprung) || stores.some((store) => store.stores === 'air'),
  }
}

/** A spring sits in its seats, a hose in its brackets, a lead in its clips, whether a file writes it or not. */
function unwritten(corner: Corner): Record<string, JointFile> {
  const written = Object.values(corner.joints)
  const found: Record<string, JointFile> = {}
  for (const [name, part] of Object.entries(corner.parts)) {
    const others =
      part.kind === 'spring' || part.kind === 'damper'
        ? part.between
        : part.kind === 'hose' || part.kind === 'lead'
          ? part.clippedTo
          : []
    const kind = { spring: 'seat', damper: 'bolt', hose: 'hose bracket', lead: 'clip' } as const
    for (const other of others)
      if (!written.some(({ joins }) => joins.includes(name) && joins.includes(other)))
        found[`${name}-at-${other}`] = {
          kind: kind[part.kind as keyof typeof kind],
          name: `${name} at ${other}`,
          joins: [name, other],
        }
  }
  return found
}

function storesOf(
  corner: Corner,
  parts: ReadonlyMap<string, Part>,
  ties: ReadonlyMap<string, Tie>,
): readonly Store[] {
  const { axle } = corner
  const found: Store[] = []
  for (const [name, hold] of Object.entries(corner.holds))
    for (const part of parts.values()) {
      if (part.axle !== axle || part.name !== name) continue
      const named = (joint: string) =>
        [...ties.values()]
          .filter((tie) => tie.axle === axle && tie.name === joint)
          .filter((tie) => !tie.side || !part.side || tie.side === part.side || tie.file.side)
          .map(({ id }) => id)
      const lists = hold.heldBy.map((list) => list.flatMap(named))
      const all = [...new Set([...lists.flat(), ...(hold.droopStop ?? []).flatMap(named)])]
      const { file } = part
      const arm =
        file.kind === 'spring' || file.kind === 'damper'
          ? file.between
              .filter((other) => !fixed(corner.parts[other]!.kind))
              .flatMap((other) =>
                [...parts.values()]
                  .filter((one) => one.axle === axle && one.name === other)
                  .filter((one) => !one.side || !part.side || one.side === part.side)
                  .map(({ id }) => id),
              )
          : []
      const pivots = all.filter((id) => {
        const { ends } = ties.get(id)!
        return ends.some((end) => arm.includes(end)) && ends.some((end) => fixed(parts.get(end)!.kind))
      })
      const kinds = hold.standInKinds ?? []
      const stores = 'stores' in file && file.stores ? file.stores : 'coil'
      const onAxleStands = kinds.includes('axle on stands') || (kinds.length === 0 && stores === 'leaf')
      found.push({ id: part.id, axle, side: part.side, stores, lists, all, arm, pivots, onAxleStands })
    }
  return found
}

function isToe(file: AdjusterFile): boolean {
  if (file.sets) return file.sets === 'toe'
  return file.kind === 'wedge' ? file.tilts === 'toe' : file.kind === 'thread'
}
