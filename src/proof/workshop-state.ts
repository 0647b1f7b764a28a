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
  /** Signs of those who left, by what they were called. */
  readonly left: readonly string[]
  /** After how many months personal values are due to be erased; null while nobody said so. */
  readonly keepsMonths: number | null
  /** Newest file of each kind and id, by digest. */
  readonly files: readonly WorkshopEntryData<'file kept'>[]
  /** Entries that do not count, and why. */
  readonly passedOver: readonly { readonly entry: number; readonly sentence: string }[]
}

/**
 * A workshop out of its log. The root and the owners that an entry knew may say who signs; what anybody else says does
 * not count. The last owner, a device or a person, cannot be revoked by an owner nor made less than one, and the root,
 * which lies on paper, cannot be revoked at all.
 *
 * @param entries verified ones
 * @param root public key of the workshop's root
 * @source own derivation: docs/methods/record.md
 */
export function workshopState(entries: readonly SealedEntry[], root: string): WorkshopState {
  const ordered = inCausalOrder(entries) as readonly SealedEntry[]
  const devices = new Map<string, CertifiedDevice>()
  const people = new Map<string, WorkshopEntryData<'person'>>()
  const left = new Set<string>()
  let keepsMonths: number | null = null
  const files = new Map<string, WorkshopEntryData<'file kept'>>()
  const passedOver: { entry: number; sentence: string }[] = []
  let name: string | null = null
  const known = ancestry(ordered)
  const isLastPerson = (sign: string) =>
    people.get(sign)?.role === 'owner' &&
    [...people.values()].filter(({ role }) => role === 'owner').length === 1
  const owners = () => [...devices.values()].filter(({ owner, revoked }) => owner && revoked === null)
  const isLast = (device: string) => owners().every((one) => one.device === device) && owners().length > 0
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
        if (!read.data.owner && entry.device !== root && isLast(read.data.device)) pass(ownerless)
        else devices.set(read.data.device, { ...read.data, revoked: null })
        break
      case 'device revoked': {
        const device = devices.get(read.data.device)
        if (!device) pass('It revokes a device that nobody certified.')
        else if (entry.device !== root && isLast(device.device)) pass(ownerless)
        else devices.set(device.device, { ...device, revoked: read.data.why })
        break
      }
      case 'person':
        if (read.data.role !== 'owner' && entry.device !== root && isLastPerson(read.data.sign))
          pass(ownerless)
        else {
          people.set(read.data.sign, read.data)
          left.delete(read.data.sign)
        }
        break
      case 'person left':
        if (!people.has(read.data.sign)) pass('It is about somebody whom nobody made known.')
        else if (entry.device !== root && isLastPerson(read.data.sign)) pass(ownerless)
        else {
          people.delete(read.data.sign)
          left.add(read.data.sign)
        }
        break
      case 'keeps':
        keepsMonths = read.data.months
        break
      case 'file kept':
        files.set(JSON.stringify([read.data.what, read.data.id]), read.data)
    }
  })
  return {
    name,
    devices: [...devices.values()],
    people: [...people.values()],
    left: [...left],
    keepsMonths,
    files: [...files.values()],
    passedOver,
  }
}

const ownerless = 'It would leave the workshop without an owner. Make another one first.'

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
    const least = entry.device === root ? 0 : 2
    if (read?.kind === 'device certified') {
      if (read.data.owner) owners.add(read.data.device)
      else if (read.data.device !== root && owners.size - 1 >= least) owners.delete(read.data.device)
    }
    if (read?.kind === 'device revoked' && read.data.device !== root && owners.size - 1 >= least)
      owners.delete(read.data.device)
  }
  return owners.has(device)
}
