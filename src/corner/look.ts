import { closestName } from './closest-name.ts'
import type { CornerFile } from './corner-schema.ts'
import { fieldPath } from './field-path.ts'
import type { Problem } from './reading.ts'
import type { Seen } from './seen.ts'

/** Where a member stands, outermost name first. */
export type Path = readonly PropertyKey[]
/** Whatever is sound by itself of a corner model. */
export type SeenCorner = NonNullable<Seen<CornerFile>>
/** What a name may lead to. */
type Named = 'point' | 'part' | 'joint' | 'adjuster'

/** A corner model while it is looked through: what it names, what was found, which names were used. */
export interface Look {
  readonly file: SeenCorner
  readonly known: Readonly<Record<Named, readonly string[]>>
  readonly found: readonly Problem[]
  readonly say: (path: Path, wrong: string, right: string) => void
  /** The name leads somewhere; it counts as used from now on. */
  readonly mustBe: (what: Named, name: string | undefined, path: Path) => void
  readonly isUsed: (what: Named, name: string) => boolean
}

/**
 * Starts looking through a corner model.
 *
 * @source definition
 */
export function lookInto(file: SeenCorner): Look {
  const found: Problem[] = []
  const used = new Set<string>()
  const known = {
    point: Object.keys(file.points ?? {}),
    part: Object.keys(file.parts ?? {}),
    joint: Object.keys(file.joints ?? {}),
    adjuster: Object.keys(file.adjusters ?? {}),
  }
  const say: Look['say'] = (path, wrong, right) => found.push({ field: fieldPath(path), wrong, right })
  return {
    file,
    known,
    found,
    say,
    isUsed: (what, name) => used.has(`${what} ${name}`),
    mustBe: (what, name, path) => {
      if (name === undefined) return
      used.add(`${what} ${name}`)
      const names = known[what]
      if (names.includes(name)) return
      const close = closestName(name, names)
      const list = names.map((n) => `"${n}"`).join(', ')
      say(
        path,
        `There is no ${what} "${name}".`,
        close ? `"${close}", if that is meant` : list ? `one of ${list}` : `a ${what} that is listed`,
      )
    },
  }
}
