import { inCausalOrder, type SealedEntry } from '../job/index.ts'
import {
  type WorkshopEntryData,
  type WorkshopEntryKind,
  workshopEntryData,
} from './workshop-entries-schema.ts'

/** A device of a workshop. @source definition */
export interface CertifiedDevice {
  readonly device: string
  readonly name: string
  readonly owner: boolean
  /** Why it was revoked; null while it is not. */
  readonly revoked: string | null
}

/** A workshop as its own log says. @source definition */
export interface WorkshopState {
  readonly name: string | null
  readonly devices: readonly CertifiedDevice[]
  readonly people: readonly WorkshopEntryData<'person'>[]
  /** Newest file of each kind and id, by digest. */
  readonly files: readonly WorkshopEntryData<'file kept'>[]
  /** Entries that do not count, and why. */
  readonly passedOver: readonly { readonly entry: number; readonly sentence: string }[]
}

/**
 * A workshop out of its log. The root and the owners that an entry knew may say who signs; what anybody else says does
 * not count. The last owner cannot be revoked by an owner, and the root, which lies on paper, cannot be revoked at all.
 *
 * @param entries verified ones
 * @param root public key of the workshop's root
 * @source own derivation: docs/methods/record.md
 */
export function workshopState(entries: readonly SealedEntry[], root: string): WorkshopState {
  const ordered = inCausalOrder(entries) as readonly SealedEntry[]
  const devices = new Map<string, CertifiedDevice>()
  const people = new Map<string, WorkshopEntryData<'person'>>()
  const files = new Map<string, WorkshopEntryData<'file kept'>>()
  const passedOver: { entry: number; sentence: string }[] = []
  let name: string | null = null
  const known = ancestry(ordered)
  const owners = () => [...devices.values()].filter(({ owner, revoked }) => owner && revoked === null)
  ordered.forEach((entry, i) => {
    const pass = (sentence: string) => {
      passedOver.push({ entry: i, sentence })
    }
    const read = readOf(entry)
    if (!read) {
      pass('It was made by a newer version, or cannot be read.')
      return
    }
    if (entry.device !== root && !mayOwn(ordered, known.get(entry.id)!, entry.device, root)) {
      pass('Whoever wrote it was no owner of the workshop.')
      return
    }
    switch (read.kind) {
      case 'workshop made':
        name ??= read.data.name
        break
      case 'device certified':
        devices.set(read.data.device, { ...read.data, revoked: null })
        break
      case 'device revoked': {
        const device = devices.get(read.data.device)
        const [last, ...others] = owners()
        if (!device) pass('It revokes a device that nobody certified.')
        else if (entry.device !== root && others.length === 0 && last?.device === device.device)
          pass('It would leave the workshop without an owner. Certify another one first.')
        else devices.set(device.device, { ...device, revoked: read.data.why })
        break
      }
      case 'person':
        people.set(read.data.sign, read.data)
        break
      case 'person left':
        people.delete(read.data.sign)
        break
      case 'file kept':
        files.set(JSON.stringify([read.data.what, read.data.id]), read.data)
    }
  })
  return {
    name,
    devices: [...devices.values()],
    people: [...people.values()],
    files: [...files.values()],
    passedOver,
  }
}

type Read = {
  [K in WorkshopEntryKind]: { readonly kind: K; readonly data: WorkshopEntryData<K> }
}[WorkshopEntryKind]

function readOf({ kind, data }: SealedEntry): Read | null {
  if (!Object.hasOwn(workshopEntryData, kind)) return null
  const parsed = workshopEntryData[kind as WorkshopEntryKind].safeParse(data)
  return parsed.success ? ({ kind, data: parsed.data } as Read) : null
}

/** By id: the ids that an entry knew. */
function ancestry(ordered: readonly SealedEntry[]): ReadonlyMap<string, ReadonlySet<string>> {
  const known = new Map<string, Set<string>>()
  for (const { id, after } of ordered)
    known.set(id, new Set(after.flatMap((one) => [one, ...(known.get(one) ?? [])])))
  return known
}

/** Whether a device was an owner by what an entry knew, said by those who were owners themselves. */
function mayOwn(
  ordered: readonly SealedEntry[],
  known: ReadonlySet<string>,
  device: string,
  root: string,
): boolean {
  const owners = new Set([root])
  for (const entry of ordered) {
    if (!known.has(entry.id) || !owners.has(entry.device)) continue
    const read = readOf(entry)
    if (read?.kind === 'device certified') {
      if (read.data.owner) owners.add(read.data.device)
      else if (read.data.device !== root) owners.delete(read.data.device)
    }
    const least = entry.device === root ? 0 : 2
    if (read?.kind === 'device revoked' && read.data.device !== root && owners.size - 1 >= least)
      owners.delete(read.data.device)
  }
  return owners.has(device)
}
