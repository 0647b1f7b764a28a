import { type BoltLine, boltBook, foldJob } from '../job/index.ts'
import { metricUnits } from '../quantity/index.ts'
import { typedValueDoubts } from '../spec/index.ts'
import type { BoltSheet, SheetBolt } from './bolt-sheet.ts'
import { doingOfJoint } from './doing-of-joint.ts'
import { kindWords } from './joint-words.ts'
import { marksOfJoint } from './marks-of-joint.ts'
import { cornerAt, type SheetOptions, type SheetSources } from './sources.ts'

/**
 * The bolt book as one plain value, what is open first: what each joint must be like, what is recorded, and what the
 * hand does now, with the wrench that leaves the torque least unsure.
 *
 * @source own derivation: docs/methods/bolt-book.md
 */
export function boltSheetFrom(sources: SheetSources, options: SheetOptions = {}): BoltSheet {
  const { units = metricUnits } = options
  const { corners, spec, kit, job } = sources
  const state = foldJob(job.entries)
  const today = options.today ?? job.entries.findLast(({ at }) => at)?.at?.slice(0, 10) ?? '0001-01-01'
  const book = boltBook({ state, corners, spec, kit })
  const open = book.filter(({ done }) => !done)
  const troubles = [
    ...state.troubles.map(({ sentence, remedy }) => `${sentence} ${remedy}`),
    ...(['front', 'rear'] as const).flatMap((end) => {
      const corner = cornerAt(sources, end)
      if (!corner)
        return [
          `No corner model of the ${end} axle: none of its joints stands in this book. Add one, or keep them on paper.`,
        ]
      if (!spec) return []
      return typedValueDoubts(spec, corner).map(({ sentence, remedy }) => `${sentence} ${remedy}`)
    }),
    ...(spec ? [] : ['No spec sheet: no joint has a value. Type them from your own information.']),
    ...(kit ? [] : ['No kit: values are those at the fastener, and no wrench is checked.']),
  ]
  const bolts = book.map((line): SheetBolt => {
    const corner = cornerAt(sources, line.wheels[0]!.startsWith('front') ? 'front' : 'rear')!
    const at = open.indexOf(line)
    return {
      wheel: line.place,
      joint: line.joint,
      named: line.wheel,
      adjuster: line.adjuster,
      marks: marksOfJoint(state, line),
      letter: line.letter,
      name: line.name,
      kind: kindWords(line.kind),
      state: line.state,
      done: line.done,
      required: line.required.said,
      source: line.required.source,
      toDo: line.toDo.map(({ holdsAt, sentence, remedy }) => ({ holds: holdsAt !== null, sentence, remedy })),
      recorded: recordedWords(line),
      doing: doingOfJoint({
        line,
        corner,
        state,
        sources,
        place: at < 0 ? 'Bolt book' : `Bolt book · ${at + 1} of ${open.length} open`,
        today,
        unit: units.torque,
      }),
    }
  })
  return { bolts, sentence: summary(book), cautions, troubles: [...new Set(troubles)] }
}

const cautions: readonly string[] = [
  'Never get under a vehicle that a jack alone carries: on its wheels, on ramps, in a pit, or on stands that you have seen take the load.',
  'Run down is not tight: mark each fastener when it is final. A torque wrench never undoes.',
  'Values and positions are those that the workshop typed from its own service information; that information and local inspection law stand above this book.',
]

function summary(book: readonly BoltLine[]): string {
  const open = book.filter(({ done }) => !done).length
  if (open > 0) return `Open joints: ${open}. Nothing is handed over before they are closed.`
  return book.some(({ state }) => state !== 'closed')
    ? 'Every joint that was opened is closed.'
    : 'No joint was opened in this job, as far as its log says.'
}

/** "final 190 N·m, at ride height, long-wrench, T" */
function recordedWords({ record }: BoltLine): readonly string[] {
  const words = (...parts: readonly (string | undefined | null)[]) => parts.filter(Boolean).join(', ')
  const { undone, moved, started, runUp, stages, final, pin, checks } = record
  return [
    ...(undone ? [words(`undone: ${undone.to}`, undone.hand)] : []),
    ...(started ? [words('started', started.fastener && `fastener ${started.fastener}`, started.hand)] : []),
    ...(runUp ? [words('run up', runUp.fastener && `fastener ${runUp.fastener}`, runUp.hand)] : []),
    ...(moved ? ['adjuster moved'] : []),
    ...[...stages, ...(final ? [final] : [])].map((fact) =>
      words(
        `${fact.stage === 'stage' ? `stage ${fact.number}:` : 'final'}${(fact.torque ?? fact.setting) ? ` ${(fact.torque ?? fact.setting)!.text}` : ''}`,
        fact.angle && `then ${fact.angle.text}`,
        fact.endFloat && `end float ${fact.endFloat.text}`,
        ...(fact.position ?? []),
        fact.wrench,
        fact.hand,
      ),
    ),
    ...(pin ? [words(`pin ${pin.pin}${pin.legsBent ? ', legs bent' : ''}`, pin.hand)] : []),
    ...checks.map(({ by, passed, hand }) =>
      words(`second look by ${by}: ${passed ? 'passed' : 'not passed'}`, hand),
    ),
  ]
}
