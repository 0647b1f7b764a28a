import { readFileSync } from 'node:fs'
import { type AnyFile, checkTogether, foldJob, inCausalOrder, readAny } from '../../job/index.ts'
import { candidates, findModel } from '../files/find-model.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { problemLines } from '../files/problem-lines.ts'
import { carried, folderOf, proofBytes } from '../record/carried.ts'

const called = { corner: 'corner model', spec: 'spec sheet', kit: 'kit', job: 'job' } as const

/** `axlewright check FILE…`: every fault of every file, and what they say against each other, in one go. */
export async function checkCommand(files: readonly string[]): Promise<Outcome> {
  const faults = new Map<string, readonly string[]>()
  const sound: { name: string; file: AnyFile }[] = []
  for (const name of files) {
    if (folderOf(name) !== null || proofBytes(name)) {
      sound.push(...(await filesOf(name)))
      continue
    }
    const text = textOf(name)
    if (text === null) {
      faults.set(name, [`${name}: it cannot be read. Check the path.`])
      continue
    }
    const reading = readAny({ name, text })
    if (reading.ok) sound.push({ name, file: reading.value })
    else faults.set(name, problemLines(name, reading.problems))
  }
  for (const { name, problems } of checkTogether(sound)) faults.set(name, problemLines(name, problems))
  let unseen = 0
  const names = [...new Set([...files, ...sound.map(({ name }) => name), ...faults.keys()])]
  const lines = names.flatMap((name) => {
    const wrong = faults.get(name)
    const file = sound.find((one) => one.name === name)?.file
    if (wrong || !file) return wrong ?? []
    const missing = missingModels(name, file, sound)
    unseen += missing.length
    const fine = `${name}: fine${missing.length > 0 ? ' by itself' : ''} (${called[file.format]}, format 1)`
    return [fine, ...missing]
  })
  const count = [...faults.values()].reduce((sum, list) => sum + list.length, 0)
  const end = count === 0 ? [] : [`${count} ${count === 1 ? 'fault' : 'faults'} to mend.`]
  return { out: `${[...lines, ...end].join('\n')}\n`, code: count > 0 ? 2 : unseen > 0 ? 1 : 0 }
}

/** A job's folder, or a proof: the job in it, and the files that it pins. */
async function filesOf(name: string): Promise<readonly { readonly name: string; readonly file: AnyFile }[]> {
  const { whose, entries, snapshots } = await carried(name)
  const job = { format: 'job', value: { ...whose, entries: inCausalOrder(entries) } } as const
  const pinned = snapshots.flatMap(({ what, digest, file }) => {
    const called = `${name}, pinned ${what} ${digest.slice(0, 8)}`
    const reading = readAny({ name: `a.${what}.json`, text: JSON.stringify(file) })
    if (!reading.ok) throw new BadInput(problemLines(called, reading.problems))
    return [{ name: called, file: reading.value }]
  })
  return [{ name, file: job }, ...pinned]
}

/** What a job names and no file has: what it says of them is not checked, so the job is not proven fine. */
function missingModels(
  name: string,
  file: AnyFile,
  given: readonly { readonly name: string; readonly file: AnyFile }[],
): readonly string[] {
  if (file.format !== 'job') return []
  const { opened } = foldJob(file.value.entries)
  if (!opened) return []
  const named = [
    ['corner', opened.corners.front],
    ['corner', opened.corners.rear],
    ['spec', opened.spec],
    ['kit', opened.kit],
  ] as const
  return named.flatMap(([kind, id]) => {
    const here = given.some((one) => one.file.format === kind && one.file.value.id === id)
    if (id === undefined || here || isBeside(kind, id, name)) return []
    return [
      `${name}: it names the ${called[kind]} “${id}”, and no file given, beside it or one folder up has that id. What it says of it is not checked: put the file there, or name it too.`,
    ]
  })
}

/** A file that cannot be read is none that has the id. */
function isBeside(kind: 'corner' | 'spec' | 'kit', id: string, job: string): boolean {
  return candidates(job, []).some((path) => {
    try {
      return findModel(kind, id, [path], []) !== null
    } catch (error) {
      if (error instanceof BadInput) return false
      throw error
    }
  })
}

function textOf(path: string): string | null {
  try {
    return readFileSync(path, 'utf8')
  } catch {
    return null
  }
}
