import type * as z from 'zod'
import { closestName } from './closest-name.ts'
import { fieldPath } from './field-path.ts'
import type { Problem } from './reading.ts'

type Issue = z.core.$ZodIssue

/**
 * What a schema found, in the words of a file: every issue one problem (an unknown member each its own).
 *
 * @param json the value that was read, to say what stands there
 * @param at where that value stands in the file
 * @source definition
 */
export function faultsOf(
  issues: readonly Issue[],
  json: unknown,
  at: readonly PropertyKey[] = [],
): readonly Problem[] {
  return issues.flatMap((issue) => problems(issue, json, at))
}

/**
 * Puts the right thing into an issue's message while the schema that made it is still at hand. A schema's
 * own message wins: there it is always what would be right.
 */
faultsOf.told = (issue: z.core.$ZodRawIssue): string | undefined => {
  switch (issue.code) {
    case 'unrecognized_keys': {
      const shape = (issue.inst as { _zod?: { def?: { shape?: object } } } | undefined)?._zod?.def?.shape
      return Object.keys(shape ?? {}).join('|')
    }
    case 'invalid_type':
      return expected[issue.expected] ?? `a value of the kind “${issue.expected}”`
    case 'invalid_value':
      return oneOf(issue.values)
    case 'too_small':
      return `at least ${issue.minimum}${counted(issue.origin)}`
    case 'too_big':
      return `at most ${issue.maximum}${counted(issue.origin)}`
    default:
      return undefined
  }
}

const expected: Readonly<Record<string, string>> = {
  object: 'an object { … }',
  record: 'an object { … }',
  array: 'a list [ … ]',
  tuple: 'a list [ … ]',
  string: 'text in double quotes',
  number: 'a plain number without quotes',
  int: 'a whole number without quotes',
  boolean: 'true or false, without quotes',
}

const counted = (origin: string): string =>
  origin === 'array' ? ' of them in the list' : origin === 'string' ? ' characters' : ''

const oneOf = (values: readonly unknown[]): string =>
  values.length === 1
    ? JSON.stringify(values[0])
    : `one of ${values.map((value) => JSON.stringify(value)).join(', ')}`

function problems(issue: Issue, json: unknown, at: readonly PropertyKey[]): Problem[] {
  const field = fieldPath([...at, ...issue.path])
  const there = valueAt(json, issue.path)
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        field: fieldPath([...at, ...issue.path, key]),
        wrong: `This format has no member "${key}" here.`,
        right: instead(key, issue.message.split('|').filter(Boolean)),
      }))
    case 'invalid_key':
      return [
        {
          field,
          wrong: `"${String(issue.path.at(-1))}" is no name for this list.`,
          right: issue.issues[0]?.message ?? 'another name',
        },
      ]
    case 'invalid_union':
      return [{ field, wrong: told(there), right: unionRight(issue) }]
    case 'custom':
      return [{ field, wrong: issue.message, right: String(issue.params?.right ?? '') }]
    case 'too_small':
    case 'too_big':
      return [
        {
          field,
          wrong: Array.isArray(there) ? `The list holds ${there.length}.` : told(there),
          right: issue.message,
        },
      ]
    default:
      return [{ field, wrong: told(there), right: issue.message }]
  }
}

function unionRight(issue: z.core.$ZodIssueInvalidUnion): string {
  const options = (issue as { options?: readonly unknown[] }).options
  return options ? oneOf(options) : issue.message
}

function instead(key: string, known: readonly string[]): string {
  const close = closestName(key, known)
  if (close) return `"${close}", if that is meant; else leave it out`
  return known.length > 0
    ? `one of ${known.map((k) => `"${k}"`).join(', ')}; else leave it out`
    : 'nothing here'
}

function told(there: unknown): string {
  if (there === undefined) return 'It is missing.'
  if (there === null) return 'There is a null.'
  if (Array.isArray(there)) return 'There is a list.'
  if (typeof there === 'object') return 'There is an object.'
  if (typeof there === 'string') return `There is the text ${JSON.stringify(there)}.`
  if (typeof there === 'number') return `There is the number ${there}.`
  return `There is ${String(there)}.`
}

function valueAt(json: unknown, path: readonly PropertyKey[]): unknown {
  let there = json
  for (const step of path) {
    if (typeof there !== 'object' || there === null || !Object.hasOwn(there, step)) return undefined
    there = (there as Record<PropertyKey, unknown>)[step]
  }
  return there
}
