import { bestImprovement, type GaugeContext, type GaugeReading, readingOf } from '../../gauge/index.ts'
import { foldJob, readJob } from '../../job/index.ts'
import { floorMapOf, instrumentsOf, type Kit, readKit } from '../../kit/index.ts'
import { budget, interval } from '../../measure/index.ts'
import { formatAngle, formatLength, formatMeasured, metre, parseLength, rad } from '../../quantity/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { wholeOf } from '../files/problem-lines.ts'
import { readJsonFile } from '../files/read-json-file.ts'
import { paragraph } from '../text/paragraph.ts'
import { observationWords, type WireEntry } from './observation-words.ts'

/** `axlewright read METHOD WORDS…`: one gauge method, with its spread and where that comes from. */
export function readCommand(
  method: string,
  given: readonly string[],
  options: { kit?: string; json?: boolean },
): Outcome {
  const { entry, words } = observationWords(method, given)
  if (options.kit === undefined)
    throw new BadInput([
      'Which gauges? Name the kit with --kit FILE, such as --kit examples/port-kit.kit.json; it says how well each gauge reads.',
    ])
  const kit = wholeOf(options.kit, readKit(readJsonFile(options.kit)))
  const observation = observationOf(entry)
  const readings = readingOf(observation, contextOf(kit, words))
  const out = options.json
    ? `${JSON.stringify(readings, null, 2)}\n`
    : `${readings.map((reading) => readingText(reading)).join('\n\n')}\n`
  return { out, code: 0 }
}

/** Goes the way of every job, so that a word is judged once and told in one way. */
function observationOf(entry: WireEntry): Parameters<typeof readingOf>[0] {
  const opened = {
    kind: 'opened',
    data: { number: '1', vehicle: 'one reading', complaint: 'none', corners: { front: 'none' } },
  }
  const job = readJob({ format: 1, workshop: 'command line', job: '1', entries: [opened, entry] })
  if (!job.ok)
    throw new BadInput(
      job.problems.map(
        (p) => `${p.field.replace('entries[1].data.', '')}: ${p.wrong} Right would be ${p.right}.`,
      ),
    )
  const state = foldJob(job.value.entries)
  const found = [...state.rounds.flatMap((r) => r.readings), ...state.heights, ...state.play][0]
  if (!found) throw new BadInput(state.troubles.map((t) => `${t.sentence} ${t.remedy}`))
  return found.observation
}

function contextOf(kit: Kit, words: ReadonlyMap<string, string>): GaugeContext {
  const bay = words.get('bay')
  const floor = bay === undefined ? null : floorMapOf(kit, bay)
  if (bay !== undefined && !floor)
    throw new BadInput([
      `The kit has no floor “${bay}”. It has ${Object.keys(kit.floors ?? {}).join(', ') || 'none'}.`,
    ])
  const length = (word: string) => {
    const text = words.get(word)
    return text === undefined ? null : parseLength(text, { at: word })
  }
  const across = length('track')
  const along = length('wheelbase')
  return {
    instruments: instrumentsOf(kit),
    ...(floor ? { floor } : {}),
    ...(across ? { track: { front: across, rear: across } } : {}),
    ...(along ? { wheelbase: along } : {}),
  }
}

const isLength = (name: string): boolean => /height|set-back/.test(name)

function readingText({ name, measured, corrections, notes, formula, source }: GaugeReading): string {
  const { low, high } = interval(measured)
  const halfWidth = (high - low) / 2
  const { text, spread } = isLength(name)
    ? formatMeasured({ value: measured.value, halfWidth, digits: 1, kind: 'length', unit: 'mm' })
    : formatMeasured({ value: measured.value, halfWidth, digits: 2, kind: 'angle', unit: '°' })
  const small = (value: number): string =>
    isLength(name)
      ? formatLength(metre(value), { unit: 'mm', digits: 2 })
      : formatAngle(rad(value), { unit: '°', digits: 3 })
  const [best] = bestImprovement(measured)
  return [
    `${name}: ${text} ${spread} (95 % interval)`,
    `  ${formula}; ${source}`,
    ...corrections.filter((c) => c.by !== 0).map((c) => `  corrected for ${c.name}: ${small(c.by)}`),
    '  what the spread is made of:',
    ...budget(measured).map(
      (line) =>
        `    ${`${(line.share * 100).toFixed(0)} %`.padStart(5)}  ${line.source}, ± ${small(Math.abs(line.effect))} standard`,
    ),
    ...notes.map((note) => paragraph(note, '  ')),
    ...(best
      ? [paragraph(`${best.sentence} That would bring it to ± ${small(best.spreadThen)}.`, '  ')]
      : []),
  ].join('\n')
}
