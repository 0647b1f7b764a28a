import { type Problem, type Reading, readFile } from '../corner/index.ts'
import { type Kit, kitSchema } from './kit-schema.ts'

/**
 * A kit out of a file's value, or every fault of the file at once.
 *
 * @param json plain value, as `readJsonText` gives it
 * @source own derivation: docs/methods/formats.md
 * @example readKit({ format: 1 }).ok // false
 */
export function readKit(json: unknown): Reading<Kit> {
  const read = readFile(json, kitSchema, 'kit')
  if (!read.ok) return read
  const problems = Object.entries(read.value.wrenches ?? {}).flatMap(([id, { range }]): Problem[] =>
    range[0].value < range[1].value
      ? []
      : [
          {
            field: `wrenches.${id}.range`,
            wrong: `“${range[0].text}” is not below “${range[1].text}”.`,
            right: 'the lowest and then the highest torque on its scale',
          },
        ],
  )
  return problems.length > 0 ? { ok: false, problems } : read
}
