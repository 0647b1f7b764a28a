import { type Action, type Assembly, failuresAt, type OrderFault, type PlanLine } from '../plan/index.ts'
import type { PlanOfJob } from './plan-of-job.ts'
import type { PlanSheetLine } from './plan-sheet.ts'
import { planTimeWords } from './plan-time-words.ts'
import { planToolWords } from './plan-tool-words.ts'

/** One line of a plan: what to do, with what, to which value, why; and what is wrong with it in its place. */
export function planLine(
  { actions, values, assembly }: Pick<PlanOfJob, 'actions' | 'values' | 'assembly'>,
  line: PlanLine,
  faults: readonly OrderFault[],
): PlanSheetLine {
  const { action } = line
  const words = (id: string) => actions[id]?.words ?? id
  return {
    id: action.id,
    words: action.words,
    letter: line.letter,
    wheel: action.axle && action.side ? `${action.axle} ${action.side}` : null,
    at: assembly && jointAt(assembly, action),
    tool: planToolWords(action.tool),
    value: line.value === null ? '' : (values[line.value] ?? ''),
    place: action.place,
    minutes: planTimeWords(usual(action)),
    cautions: action.cautions,
    records: action.records,
    why: action.why,
    waitsFor: line.waitsFor.map(({ action: id, why }) => ({ id, words: words(id), why })),
    waitedForBy: line.waitedForBy.map((id) => ({ id, words: words(id) })),
    broken: faults
      .map(({ rule, would, instead }) => ({ rule, sentence: would, instead }))
      .filter((one, at, all) => all.findIndex(({ sentence }) => sentence === one.sentence) === at),
  }
}

function jointAt(assembly: Assembly, { joint }: Action): PlanSheetLine['at'] {
  const node = joint === undefined ? undefined : assembly.joints[joint]
  if (!node?.axle) return null
  return {
    joint: node.name,
    wheel: `${node.axle} ${node.side ?? 'left'}`,
    fails: failuresAt(assembly, node.id),
  }
}

const usual = ({ minutes: [, most] }: Action) => most
