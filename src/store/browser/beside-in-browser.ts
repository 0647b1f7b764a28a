import { digestOf, hashOf, type Snapshot } from '../../proof/index.ts'
import type { KeptJob } from '../log-store.ts'
import { refused } from '../refused.ts'
import type { Database } from './database.ts'

/**
 * What lies beside a log in the browser: pinned files by digest, bytes by hash.
 *
 * @source own derivation: docs/methods/record.md
 */
export function besideInBrowser(
  database: Database,
  job: string,
): Pick<KeptJob, 'pin' | 'pinned' | 'keep' | 'kept' | 'beside' | 'forget'> {
  const mine = IDBKeyRange.bound([job], [job, []])
  const put = (store: 'pinned' | 'beside', name: string, value: string | Uint8Array<ArrayBuffer>) =>
    database.use(async (opened) => {
      const tx = opened.transaction(store, 'readwrite', { durability: 'strict' })
      await Promise.all([tx.store.put(value as never, [job, name]), tx.done])
    })
  return {
    pin: ({ what, file }: Snapshot) => put('pinned', `${what}-${digestOf(what, file)}`, JSON.stringify(file)),
    pinned: () =>
      database.use(async (opened) => {
        const tx = opened.transaction('pinned')
        const [keys, texts] = await Promise.all([tx.store.getAllKeys(mine), tx.store.getAll(mine)])
        return keys.flatMap(([, name], i) => {
          const [, what, digest] = /^(corner|spec|kit)-([0-9a-f]{64})$/.exec(name) ?? []
          if (!what || !digest) return []
          return [{ what: what as Snapshot['what'], digest, file: json(texts[i]!) }]
        })
      }),
    keep: async (bytes) => {
      const hash = hashOf(bytes)
      await put('beside', hash, Uint8Array.from(bytes))
      return hash
    },
    kept: () =>
      database.use(async (opened) => (await opened.getAllKeys('beside', mine)).map(([, hash]) => hash)),
    beside: async (hash) => {
      const bytes = await database.use((opened) => opened.get('beside', [job, hash]))
      if (bytes && hashOf(bytes) !== hash)
        throw refused(
          'spoilt',
          hash,
          'What was kept beside the job is not what it was: somebody changed it, or the disk lost it.',
          'Bring it in again from another copy of the job.',
        )
      return bytes ?? null
    },
    forget: (hash) =>
      database.use(async (opened) => {
        const tx = opened.transaction('beside', 'readwrite', { durability: 'strict' })
        const wasThere = (await tx.store.count([job, hash])) > 0
        await Promise.all([tx.store.delete([job, hash]), tx.done])
        return wasThere
      }),
  }
}

function json(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    throw refused(
      'spoilt',
      'pinned file',
      'A pinned file of the job can no longer be read: it was changed, or the disk lost it.',
      'Bring the job in again from another copy.',
    )
  }
}
