import {
  type Entry,
  foldJob,
  inCausalOrder,
  isSealed,
  type SealedEntry,
  type Trouble,
} from '../../job/index.ts'
import { revealed } from '../../proof/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { appended } from '../record/appended.ts'
import { type Carried, carried } from '../record/carried.ts'

/** What `decide` can be told. */
export interface DecideOptions {
  readonly keep?: string
  readonly conflict?: string
  readonly why?: string
  readonly person?: string
  readonly json?: boolean
}

/** `axlewright decide JOB`: what the log says two ways, with its values; with --keep it is settled by an entry of its own. */
export async function decideCommand(path: string, options: DecideOptions): Promise<Outcome> {
  const job = await carried(path)
  const entries = inCausalOrder(job.entries)
  const open = conflictsIn(entries)
  if (options.keep === undefined) return listed(job, open, options.json ?? false)
  const { conflict, place } = asked(entries, open, { keep: options.keep, conflict: options.conflict })
  const { why, person } = options
  if (why === undefined || person === undefined)
    throw new BadInput(['Say why and who decides: --why TEXT --person SIGN.'])
  const sealed = entries.filter(isSealed)
  if (job.from !== 'folder' || sealed.length < entries.length)
    throw new BadInput([
      `${path}: Only in a job that is kept in its folder can something be decided. Name the folder that "seal" or "merge" made.`,
    ])
  const id = (at: number) => (entries[at] as SealedEntry).id
  const decision: Entry = {
    kind: 'decision',
    data: { of: conflict.choice!.map(id), keep: id(place), why, hand: person },
  }
  const told = await appended(job, decision, person)
  const left = conflictsIn(inCausalOrder((await carried(path)).entries))
  const lines = [
    ...told,
    `Decided: entries[${place}] holds. The others are set aside, not erased; a decision on decisions can take it back.`,
    left.length === 0 ? 'Nothing is left to decide.' : `${left.length} left to decide.`,
  ]
  return { out: `${lines.join('\n')}\n`, code: left.length > 0 ? 1 : 0 }
}

const conflictsIn = (entries: readonly Entry[]): readonly Trouble[] =>
  foldJob(entries).troubles.filter(({ choice }) => choice !== undefined)

function listed({ path, entries, values }: Carried, open: readonly Trouble[], json: boolean): Outcome {
  const shown = revealed(entries, values).entries
  const code = open.length > 0 ? 1 : 0
  if (json)
    return {
      out: `${JSON.stringify(
        open.map((one) => ({ ...one, says: one.choice!.map((at) => ({ place: at, ...shown[at]! })) })),
        null,
        2,
      )}\n`,
      code,
    }
  if (open.length === 0) return { out: 'Nothing is to be decided: the log says nothing two ways.\n', code }
  const lines = open.flatMap((one, i) => [
    `${i + 1}. ${one.sentence}`,
    ...one.choice!.flatMap((at) => entryLines(shown, one.choice!, at)),
    `   ${one.remedy}`,
  ])
  const how = `axlewright decide ${path} ${open.length > 1 ? '--conflict N ' : ''}--keep PLACE --why TEXT --person SIGN`
  return { out: `${[...lines, '', `To settle one: ${how}`].join('\n')}\n`, code }
}

/** Who wrote it, and what it says that the others say otherwise. */
function entryLines(entries: readonly Entry[], choice: readonly number[], at: number): readonly string[] {
  const said = choice.map((one) => new Map(membersOf(entries[one]!.data)))
  const mine = said[choice.indexOf(at)]!
  const differs = [...mine].filter(([name, text]) => said.some((other) => other.get(name) !== text))
  const lacks = [...new Set(said.flatMap((one) => [...one.keys()]))].filter((name) => !mine.has(name))
  const words = (differs.length > 0 || lacks.length > 0 ? differs : [...mine]).map(
    ([name, text]) => `${name} ${text}`,
  )
  const entry = entries[at]!
  const by = isSealed(entry) ? `, ${entry.person}, ${entry.at}: ${entry.id.slice(0, 12)}` : ''
  return [
    `   ${at}: ${entry.kind}${by}`,
    `      ${[...words, ...lacks.map((name) => `no ${name}`)].join(' · ')}`,
  ]
}

/** Every member that holds a plain value, by its path. */
const membersOf = (value: unknown, path = ''): readonly (readonly [string, string])[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([name, inner]) =>
        membersOf(inner, Array.isArray(value) ? `${path}[${name}]` : path === '' ? name : `${path}.${name}`),
      )
    : [[path, typeof value === 'string' ? `“${value}”` : String(value)]]

/** Which conflict and which of its entries are meant. */
function asked(
  entries: readonly Entry[],
  open: readonly Trouble[],
  { keep, conflict }: { readonly keep: string; readonly conflict: string | undefined },
): { readonly conflict: Trouble; readonly place: number } {
  if (open.length === 0) throw new BadInput(['Nothing is to be decided: the log says nothing two ways.'])
  const meant = conflict === undefined ? open : open.slice(Number(conflict) - 1, Number(conflict))
  if (conflict !== undefined && (!/^\d{1,6}$/.test(conflict) || meant.length === 0))
    throw new BadInput([`There is no conflict “${conflict}”: there are ${open.length}, counted from 1.`])
  const place = /^\d{1,9}$/.test(keep)
    ? Number(keep)
    : entries.findIndex((one) => isSealed(one) && keep.length >= 8 && one.id.startsWith(keep.toLowerCase()))
  const found = meant.filter(({ choice }) => choice!.includes(place))
  if (found.length === 1) return { conflict: found[0]!, place }
  throw new BadInput([
    found.length === 0
      ? `“${keep}” is none of what can be kept: ${meant.flatMap(({ choice }) => choice!).join(', ')}.`
      : `Entry ${place} stands in ${found.length} conflicts. Say which with --conflict N.`,
  ])
}
