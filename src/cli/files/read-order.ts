import { readFileSync } from 'node:fs'
import { readJsonText } from '../../corner/index.ts'
import { BadInput } from './outcome.ts'

const forms =
  'Write one id a line (what stands after “#” is passed over), a JSON list of ids, or what “plan --json” printed.'

/** The ids of a hand-made order: one a line, a JSON list, or a plan's own JSON with its lines moved. */
export function readOrder(path: string): readonly string[] {
  let text: string
  try {
    text = readFileSync(path, 'utf8')
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    const why = code === 'ENOENT' ? 'There is no such file.' : `It cannot be read (${code}).`
    throw new BadInput([`${path}: ${why} Check the path and try again.`])
  }
  const ids = /^\s*[[{]/.test(text) ? idsOfJson(path, text) : idsOfLines(text)
  if (ids.length === 0) throw new BadInput([`${path}: There is no action in it. ${forms}`])
  return ids
}

const idsOfLines = (text: string): readonly string[] =>
  text
    .replace(/^\uFEFF/, '')
    .split(/\r?\n/)
    .map((line) => line.replace(/(^|\s)#.*$/, '').trim())
    .filter(Boolean)

function idsOfJson(path: string, text: string): readonly string[] {
  const reading = readJsonText(text)
  if (!reading.ok)
    throw new BadInput(
      reading.problems.map((p) => `${path}, ${p.field}: ${p.wrong} Right would be ${p.right}.`),
    )
  const list = Array.isArray(reading.value) ? reading.value : linesOf(reading.value)
  const ids = list?.map((one) => (typeof one === 'string' ? one : idOf(one)))
  if (!ids || ids.some((id) => id === null))
    throw new BadInput([`${path}: This is no order of actions. ${forms}`])
  return ids as readonly string[]
}

const member = (value: unknown, name: string): unknown =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[name] : undefined

function linesOf(value: unknown): readonly unknown[] | null {
  const bands = member(value, 'bands')
  if (!Array.isArray(bands)) return null
  return bands.flatMap((band) => {
    const lines = member(band, 'lines')
    return Array.isArray(lines) ? lines : [null]
  })
}

function idOf(line: unknown): string | null {
  const id = member(line, 'id')
  return typeof id === 'string' ? id : null
}
