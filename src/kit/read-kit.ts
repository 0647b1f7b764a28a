import { fieldPath, type Problem, type Reading, readFile, readPart, type Seen } from '../corner/index.ts'
import { thresholdFaults } from '../spec/index.ts'
import { type Kit, type KitFile, kitSchema, wrenchRange } from './kit-schema.ts'

/**
 * A kit out of a file's value, or every fault of the file at once.
 *
 * @param json plain value, as `readJsonText` gives it
 * @source own derivation: docs/methods/formats.md
 * @example readKit({ format: 1 }).ok // false
 */
export function readKit(json: unknown): Reading<Kit> {
  return readFile(json, kitSchema, 'kit', inOrder)
}

function inOrder(file: Seen<KitFile>): readonly Problem[] {
  const scales = Object.entries(file?.wrenches ?? {}).flatMap(([id, wrench]): Problem[] => {
    const path = ['wrenches', id, 'range']
    const read = readPart(wrench?.range, wrenchRange, path)
    if (!read.ok || read.value[0].value < read.value[1].value) return []
    return [
      {
        field: fieldPath(path),
        wrong: `“${read.value[0].text}” is not below “${read.value[1].text}”.`,
        right: 'the lowest and then the highest torque on its scale',
      },
    ]
  })
  return [...scales, ...thresholdFaults(file?.thresholds?.inside, 'thresholds.inside')]
}
