import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import { browserTrouble } from './browser-trouble.ts'

/** What the browser keeps of a job's log besides its lines. @source definition */
interface LogHead {
  readonly workshop: string
  /** Pieces, and all their bytes. */
  readonly pieces: number
  readonly bytes: number
}

/** What is kept in the browser; keys stand beside the values. @source own derivation: docs/methods/record.md */
export interface Kept extends DBSchema {
  /** By job. */
  readonly logs: { readonly key: string; readonly value: LogHead }
  /** By job and number from 1: the bytes of whole lines. */
  readonly pieces: { readonly key: [string, number]; readonly value: Uint8Array<ArrayBuffer> }
  /** By job and "what-digest": the file as JSON text. */
  readonly pinned: { readonly key: [string, string]; readonly value: string }
  /** By job and SHA-256. */
  readonly beside: { readonly key: [string, string]; readonly value: Uint8Array<ArrayBuffer> }
  /** By job and what it is: what can be made again out of the log. */
  readonly recalled: { readonly key: [string, string]; readonly value: string }
  /** By whose it is, "device": 32 secret bytes as hexadecimal digits. */
  readonly keys: { readonly key: 'device'; readonly value: string }
}

/** A database that is opened when it is first needed, and again after the browser took it away. @source definition */
export interface Database {
  readonly name: string
  /**
   * Works in it. When the browser closed it since, it is opened once more.
   *
   * @throws {Refusal} `no-room`, `read-only`, `newer`, `unreadable`
   */
  readonly use: <T>(work: (database: IDBPDatabase<Kept>) => Promise<T>) => Promise<T>
  /** How often it was opened: what was read of an earlier one need not be in this one. */
  readonly openings: () => number
}

/**
 * The browser's database of a name.
 *
 * @source W3C Indexed Database API 3.0
 */
export function databaseOf(name: string): Database {
  let opened: Promise<IDBPDatabase<Kept>> | null = null
  let openings = 0
  const forget = () => {
    opened = null
  }
  const open = (): Promise<IDBPDatabase<Kept>> => {
    if (opened) return opened
    openings++
    const mine = openDB<Kept>(name, version, {
      upgrade: (database) => {
        for (const store of stores)
          if (!database.objectStoreNames.contains(store)) database.createObjectStore(store)
      },
      // Somebody deletes it, or a newer version of the program changes it: give way, and open it anew.
      blocking: (_from, _to, event) => {
        forget()
        ;(event.target as IDBDatabase).close()
      },
      terminated: forget,
    })
    opened = mine
    mine.catch(forget)
    return mine
  }
  return {
    name,
    openings: () => openings,
    use: async (work) => {
      try {
        try {
          return await work(await open())
        } catch (error) {
          if (!isClosed(error)) throw error
          forget()
          return await work(await open())
        }
      } catch (error) {
        throw browserTrouble(error)
      }
    },
  }
}

const version = 2
const stores = ['logs', 'pieces', 'pinned', 'beside', 'recalled', 'keys'] as const

/** Closed before it was used, or taken away in the middle of it: nothing of that transaction was kept. */
const isClosed = (error: unknown): boolean =>
  error instanceof DOMException && ['InvalidStateError', 'AbortError'].includes(error.name)
