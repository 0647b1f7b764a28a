import { readFileSync, statSync } from 'node:fs'
import { basename, dirname } from 'node:path'
import { type Entry, type PrivateValue, readJob } from '../../job/index.ts'
import { type Proof, readProof, type Snapshot } from '../../proof/index.ts'
import { jobFolder, privateBeside, type SpoiltLine, type Whose } from '../../store/index.ts'
import { BadInput } from '../files/outcome.ts'
import { wholeOf } from '../files/problem-lines.ts'
import { readJsonFile } from '../files/read-json-file.ts'
import { carriedJobIn } from './carried-job-in.ts'

/** A job as it was carried here: in a folder, in a job file, or in a proof. */
export interface Carried {
  readonly path: string
  readonly from: 'folder' | 'job file' | 'proof'
  readonly whose: Whose
  /** Sealed ones, then bare ones. */
  readonly entries: readonly Entry[]
  readonly snapshots: readonly Snapshot[]
  /** Personal values that came with it. */
  readonly values: readonly PrivateValue[]
  /** Personal values that were erased there, by commitment: no other copy brings them back. */
  readonly erasedValues: readonly string[]
  /** Personal values that are not what was sealed any more, by commitment. */
  readonly lostValues: readonly string[]
  readonly spoilt: readonly SpoiltLine[]
  readonly told: readonly string[]
  /** The proof itself, where it is one. */
  readonly proof: Proof | null
}

/** Reads a job however it is carried. */
export async function carried(path: string): Promise<Carried> {
  const place = folderOf(path)
  if (place !== null) return carriedFolder(place)
  const bytes = proofBytes(path)
  if (bytes) {
    const { proof, spoilt } = readProof(bytes)
    if (!proof)
      throw new BadInput([
        `${path}: This proof is not intact: ${spoilt[0]!.sentence} "axlewright verify ${path}" says where.`,
      ])
    const { head, entries, snapshots } = proof
    const whose = { workshop: head.workshop, job: head.job }
    const values = proof.private ?? []
    return { ...alone, path, from: 'proof', whose, entries, snapshots, values, proof }
  }
  const { workshop, job, entries, private: values = [] } = wholeOf(path, readJob(readJsonFile(path)))
  const whose = { workshop, job }
  return { ...alone, path, from: 'job file', whose, entries, values }
}

const alone = { snapshots: [], lostValues: [], erasedValues: [], spoilt: [], told: [], proof: null }

async function carriedFolder(path: string): Promise<Carried> {
  const folder = jobFolder(path)
  const { whose, entries, spoilt, told } = await folder.read()
  if (!whose)
    throw new BadInput([
      `${path}: ${spoilt[0] ? `Nothing in its log can be read. Line ${spoilt[0].line}: ${spoilt[0].sentence}` : 'There is no entry in it yet.'} Name another copy of the job.`,
    ])
  const snapshots = await folder.pinned()
  const beside = await privateBeside(folder, entries)
  return {
    ...alone,
    path,
    from: 'folder',
    whose,
    entries,
    snapshots,
    // What is not what was sealed is told wherever it would be shown.
    values: [...beside.values, ...beside.spoilt.map((commitment) => ({ commitment, salt: '', value: '' }))],
    lostValues: beside.spoilt,
    erasedValues: beside.erased,
    spoilt,
    told,
  }
}

/** A job's folder, named itself or by its log; null for a file of another kind. */
export function folderOf(path: string): string | null {
  if (basename(path) === 'log.jsonl') return dirname(path)
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ? path : null
}

/** The bytes of a proof: a file that is one by its name or its first line, or the one in a file for carrying; else null. */
export function proofBytes(path: string): Uint8Array | null {
  const within = carriedJobIn(path)
  if (within) return within.proof
  const stat = statSync(path, { throwIfNoEntry: false })
  if (!stat?.isFile() || stat.size > most) return null
  try {
    const bytes = readFileSync(path)
    const begins = bytes.subarray(0, opening.length).toString('latin1') === opening
    return path.endsWith('.proof.json') || begins ? bytes : null
  } catch {
    return null
  }
}

const opening = '{"entries":[\n'
/** As of any file, bytes. */
const most = 64 * 1024 * 1024
