import { fieldPath, type Problem, readPart, type Seen } from '../corner/index.ts'
import { rangeSchemas, type SpecFile } from './spec-schema.ts'
import { thresholdFaults } from './threshold-faults.ts'

interface Quantity {
  readonly text: string
  readonly value: number
}

/**
 * What is wrong between the two ends of a limit, a height or a torque: the wrong way round, or a preferred
 * value outside them. What cannot be read by itself has been told already and is passed over.
 *
 * @param file whatever is sound by itself
 * @source definition
 */
export function endsInOrder(file: Seen<SpecFile>): readonly Problem[] {
  const found: Problem[] = []
  const check = (path: readonly string[], part: unknown, schema: keyof typeof rangeSchemas) => {
    const read = readPart(part, rangeSchemas[schema], path)
    if (!read.ok || !('low' in read.value)) return
    const { low, high, preferred } = read.value as { low: Quantity; high: Quantity; preferred?: Quantity }
    if (low.value > high.value)
      found.push({
        field: fieldPath(path),
        wrong: `The low end “${low.text}” is above the high end “${high.text}”.`,
        right: 'the lower value under "low"; mind the signs',
      })
    else if (preferred && (preferred.value < low.value || preferred.value > high.value))
      found.push({
        field: fieldPath([...path, 'preferred']),
        wrong: `“${preferred.text}” does not lie between “${low.text}” and “${high.text}”.`,
        right: 'a value inside the limits, or none',
      })
  }
  found.push(...thresholdFaults(file?.thresholds?.inside, 'thresholds.inside'))
  for (const [key, limit] of Object.entries(file?.limits ?? {}))
    check(['limits', key], limit, key.includes('toe') ? 'toeLimit' : 'angleLimit')
  for (const end of ['front', 'rear'] as const) {
    check(['rideHeight', end], file?.rideHeight?.[end], 'height')
    for (const [joint, value] of Object.entries(file?.tightening?.[end] ?? {}))
      check(['tightening', end, joint], value, 'tightening')
  }
  return found
}
