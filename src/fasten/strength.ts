import {
  inch,
  inInches,
  inMillimetres,
  type Metre,
  metre,
  mm,
  type Pascal,
  pascal,
} from '../quantity/index.ts'
import { fastenRefusal } from './fasten-refusal.ts'
import type { Thread } from './thread.ts'

/** The least a bolt of a class or grade bears. @source definition */
export interface Strength {
  /** "8.8", "grade 5". */
  readonly mark: string
  /** Stress it bears without lasting stretch. */
  readonly proof: Pascal
  readonly yield: Pascal
  readonly ultimate: Pascal
  readonly from: Metre
  readonly upTo: Metre
  readonly source: string
}

const MEGA = 1e6
// ksi: 1000 lbf per square inch, from its definition.
const KSI = (1000 * 0.45359237 * 9.80665) / (0.0254 * 0.0254)
const READ = 'ISO 898-1:2013, table 3, read in a public copy'
const REMEMBERED = 'ISO 898-1:2013, table 3, from memory'
const SAE =
  'SAE J429 as tabulated by Shigley & Mischke, Mechanical Engineering Design, 5th ed. (1989), p. 341, read in a public copy'
const LARGEST = mm(39)
const SPLIT = mm(16)

/** Proof, yield and ultimate stress in MPa. */
const iso = (
  mark: string,
  [proof, ys, ultimate]: readonly [number, number, number],
  source: string,
  from: Metre = metre(0),
  upTo = LARGEST,
): Strength => ({
  mark,
  proof: pascal(proof * MEGA),
  yield: pascal(ys * MEGA),
  ultimate: pascal(ultimate * MEGA),
  from,
  upTo,
  source,
})

/** The same in ksi, sizes in inches. */
const sae = (
  grade: string,
  [proof, ys, ultimate]: readonly [number, number, number],
  from: number,
  upTo: number,
): Strength => ({
  mark: `grade ${grade}`,
  proof: pascal(proof * KSI),
  yield: pascal(ys * KSI),
  ultimate: pascal(ultimate * KSI),
  from: inch(from),
  upTo: inch(upTo),
  source: SAE,
})

/**
 * Property classes and grades with the sizes they hold for: above `from` (or at it, for the first) up to and with `upTo`.
 *
 * @source ISO 898-1:2013, table 3; SAE J429 as tabulated by Shigley & Mischke, 5th ed. (1989), p. 341; each row says whether it was read or is from memory
 * @example strengths.length // 20
 */
export const strengths: readonly Strength[] = [
  iso('4.6', [225, 240, 400], REMEMBERED),
  iso('4.8', [310, 340, 420], REMEMBERED),
  iso('5.6', [280, 300, 500], REMEMBERED),
  iso('5.8', [380, 420, 520], REMEMBERED),
  iso('6.8', [440, 480, 600], REMEMBERED),
  iso('8.8', [580, 640, 800], READ, metre(0), SPLIT),
  iso('8.8', [600, 660, 830], READ, SPLIT),
  iso('9.8', [650, 720, 900], REMEMBERED, metre(0), SPLIT),
  iso('10.9', [830, 940, 1040], READ),
  iso('12.9', [970, 1100, 1220], READ),
  sae('1', [33, 36, 60], 1 / 4, 3 / 2),
  sae('2', [55, 57, 74], 1 / 4, 3 / 4),
  sae('2', [33, 36, 60], 3 / 4, 3 / 2),
  sae('4', [65, 100, 115], 1 / 4, 3 / 2),
  sae('5', [85, 92, 120], 1 / 4, 1),
  sae('5', [74, 81, 105], 1, 3 / 2),
  sae('5.2', [85, 92, 120], 1 / 4, 1),
  sae('7', [105, 115, 133], 1 / 4, 3 / 2),
  sae('8', [120, 130, 150], 1 / 4, 3 / 2),
  sae('8.2', [120, 130, 150], 1 / 4, 1),
]

const CLASS = /^(?:class\s*)?(\d{1,2}\.\d)$/i
const GRADE = /^(?:SAE(?:\s*J429)?\s*)?(?:grade|gr\.?)\s*(\d(?:\.\d)?)$/i

/**
 * The row of a class or grade as it is written, for a thread of this size: "8.8", "class 10.9", "grade 5", "SAE grade 8".
 *
 * @throws {Refusal} `unknown-strength` when no row has it, or none for this size; a bare "8" may be a nut's class or a bolt's grade
 * @source ISO 898-1:2013, table 3; SAE J429
 * @example strengthOf('8.8', parseThread('M20')).proof // 6e8
 */
export function strengthOf(written: string, thread: Thread): Strength {
  const text = written.trim()
  const grade = GRADE.exec(text)?.[1]
  const mark = grade === undefined ? CLASS.exec(text)?.[1] : `grade ${grade}`
  const rows = strengths.filter((row) => row.mark === mark)
  const d = thread.diameter
  const found = rows.find(
    ({ from, upTo }, i) => (i === 0 ? d >= from : d > from + SLACK) && d <= upTo + SLACK,
  )
  if (found) return found
  const [first] = rows
  const last = rows.at(-1)
  throw fastenRefusal({
    code: 'unknown-strength',
    at: 'strength',
    given: written,
    sentence:
      first && last
        ? `${mark} is given for sizes ${first.from === 0 ? '' : `from ${size(first.from, thread)} `}up to ${size(last.upTo, thread)}, not for ${thread.designation}.`
        : `“${written}” is no class or grade of the tables (${[...new Set(strengths.map((row) => row.mark))].join(', ')}).`,
    remedy: 'Read the mark on the head again; leave the class open when there is none.',
  })
}

/** Rounding of an inch in metres. */
const SLACK = 1e-9
const size = (d: Metre, { system }: Thread) =>
  system === 'metric' ? `${rounded(inMillimetres(d))} mm` : `${rounded(inInches(d))} in`
const rounded = (value: number) => Number(value.toFixed(3))
