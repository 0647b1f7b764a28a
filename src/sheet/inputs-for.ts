import type { ReadingFact } from '../job/index.ts'
import type { ReadingName } from '../linkage/index.ts'
import type { SheetInput } from './sheet.ts'

/**
 * What was typed for one reading of an observation, each with words for where it was read. What all readings
 * of an observation share (a span, a wheelbase) is left to the observation itself.
 *
 * @source definition
 */
export function inputsFor(
  { observation, typings, entry }: ReadingFact,
  name: ReadingName,
): readonly SheetInput[] {
  const texts = new Map(typings.map(({ path, text }) => [path, text]))
  const input = (path: string, label: string): SheetInput[] => {
    const text = texts.get(path)
    return text === undefined ? [] : [{ entry, path, label, text }]
  }
  switch (observation.method) {
    case 'inclinometer':
      return observation.readings.flatMap((_, i) =>
        input(`readings[${i}].reading`, `wheel at ${texts.get(`readings[${i}].wheelTurn`) ?? '0°'}`),
      )
    case 'steer sweep':
      return observation.sweeps.flatMap((_, i) =>
        (['left', 'right'] as const).flatMap((side) =>
          [
            ['steer', 'steered'],
            ['camber', 'camber'],
            ...(name.endsWith('sai') ? [['tilt', 'tilt'] as const] : []),
          ].flatMap(([field, word]) =>
            input(`sweeps[${i}].${side}.${field}`, `sweep ${i + 1}, to the ${side}: ${word}`),
          ),
        ),
      )
    case 'strings and rule': {
      const wheel = name.split(' ').slice(0, 2).join(' ')
      return (['front', 'rear'] as const).flatMap((edge) =>
        typings
          .filter(({ path }) => path.startsWith(`wheels.${wheel}.${edge}[`))
          .flatMap(({ path }, i) => input(path, `string to rim, ${edge} edge${i > 0 ? `, ${i + 1}` : ''}`)),
      )
    }
    case 'tape on a scribed line':
      return (['front', 'rear'] as const).flatMap((end) =>
        observation[end].flatMap((_, i) =>
          input(`${end}[${i}]`, `tape, ${end} of the tyres${i > 0 ? `, ${i + 1}` : ''}`),
        ),
      )
    default:
      return typings.map(({ path, text }) => ({ entry, path, label: path, text }))
  }
}
