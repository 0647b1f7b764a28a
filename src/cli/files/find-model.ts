import { readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { readJsonFile } from './read-json-file.ts'

/** Files that may hold what a job names: those given, then those beside the job, then one folder up. */
export function candidates(job: string, given: readonly string[]): readonly string[] {
  const folder = dirname(job)
  const beside = [folder, join(folder, '..')].flatMap((place) => {
    try {
      return readdirSync(place)
        .filter((name) => /\.(corner|spec|kit)\.json$/.test(name))
        .map((name) => join(place, name))
    } catch {
      return []
    }
  })
  return [...given, ...beside]
}

/** How the files of each kind of model end. */
export const endings = { corner: '.corner.json', spec: '.spec.json', kit: '.kit.json' } as const

/** Finds one model by its id; null when no file has it. */
export function findModel(
  kind: keyof typeof endings,
  id: string,
  files: readonly string[],
  given: readonly string[],
) {
  for (const path of files) {
    if (!given.includes(path) && !path.endsWith(endings[kind])) continue
    const value = readJsonFile(path) as { id?: unknown } | null
    if (value?.id === id) return { path, value }
  }
  return null
}
