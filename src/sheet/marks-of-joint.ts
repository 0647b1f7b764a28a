import type { BoltLine, JobState } from '../job/index.ts'
import type { SheetMark } from './bolt-sheet.ts'

type Found = Partial<
  Pick<
    JobState['marks'][number],
    'hole' | 'shims' | 'wayRound' | 'exposedThread' | 'jointLength' | 'turns' | 'bodySideToo' | 'remark'
  >
>

/** How a joint was found: its own marks, and those of the adjuster that its bolt carries, as they stand in the log. */
export function marksOfJoint(
  state: JobState,
  { wheels, joint, adjuster }: Pick<BoltLine, 'wheels' | 'joint' | 'adjuster'>,
): readonly SheetMark[] {
  const marks = state.marks
    .filter((one) => one.joint === joint && (!one.wheel || wheels.includes(one.wheel)))
    .map(
      (one): SheetMark => ({
        entry: one.entry,
        what: one.what,
        clock: one.clock?.value ?? null,
        words: wordsOf(one),
        photo: one.photo ?? null,
      }),
    )
  const settings = state.asFound
    .filter((one) => one.adjuster === adjuster && wheels.includes(one.wheel))
    .map((one): SheetMark => {
      const { setting, fitted, jointToThread, ...found } = one
      const words = [
        ...(setting ? [`setting ${setting.text}`] : []),
        ...(fitted === 'turned round' ? ['fitted turned round'] : []),
        ...(jointToThread ? [`joint to thread ${jointToThread.text}`] : []),
      ]
      return {
        entry: one.entry,
        what: 'setting as found',
        clock: one.clock?.value ?? null,
        words: [...words, ...wordsOf(found)],
        photo: one.photo ?? null,
      }
    })
  return [...marks, ...settings].sort((a, b) => a.entry - b.entry)
}

const wordsOf = (found: Found): readonly string[] => [
  ...(found.wayRound ? [found.wayRound] : []),
  ...(found.hole ? [`hole ${found.hole}`] : []),
  ...(found.shims ?? []).map(
    ({ at, thicknesses }) =>
      `shims ${at}: ${thicknesses.length === 0 ? 'none' : thicknesses.map(({ text }) => text).join(', ')}`,
  ),
  ...(found.exposedThread ? [`exposed thread ${found.exposedThread.text}`] : []),
  ...(found.jointLength ? [`length ${found.jointLength.text}`] : []),
  ...(found.turns ? [`${found.turns.text} to let it down`] : []),
  ...(found.bodySideToo ? ['marked on the body too'] : []),
  ...(found.remark ? [found.remark] : []),
]
