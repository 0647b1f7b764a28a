import { assemblyOf } from '../../plan/index.ts'
import { type PlanOfJobOptions, type PlanSheet, planSheetFrom, type SheetSources } from '../../sheet/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { readOrder } from '../files/read-order.ts'
import { writeTextFile } from '../files/write-text-file.ts'
import { planHtml } from '../html/plan-html.ts'
import { jobSources } from '../record/job-sources.ts'
import { plainText } from '../text/plain-text.ts'
import { planText } from '../text/plan-text.ts'
import { planFailures } from './plan-failures.ts'
import { planIds } from './plan-ids.ts'

/** Options of `axlewright plan`. */
export interface PlanCommandOptions {
  readonly with?: readonly string[]
  readonly replace?: readonly string[]
  readonly open?: readonly string[]
  readonly failed?: readonly string[]
  readonly judge?: string
  readonly html?: string
  readonly json?: boolean
  readonly ids?: boolean
  readonly plain?: boolean
  readonly why?: boolean
  readonly support?: string
  readonly afresh?: boolean
  readonly makeSafe?: string
  readonly search?: string
}

/** Steps of the search for an order; the same steps give the same plan anywhere. */
const budgets = { quick: 1e6, usual: 5e6, long: 1e8 } as const

/** `axlewright plan JOB`: what is done in which order; or an order made by hand, judged. Ends with 1 when a rule is broken. */
export async function planCommand(path: string, options: PlanCommandOptions): Promise<Outcome> {
  const sources = await jobSources(path, options.with ?? [])
  const order = options.judge === undefined ? undefined : readOrder(options.judge)
  const sheet = planSheetFrom(sources, {
    ...howOf(options),
    ...askedOf(sources, options),
    order,
  })
  if (sheet.bands.length === 0 && sheet.done === '') throw new BadInput(nothingPlanned(sheet))
  const code = sheet.brokenLines > 0 || sheet.troubles.length > 0 ? 1 : 0
  if (options.html !== undefined) {
    writeTextFile(options.html, planHtml(sheet), { replace: true })
    if (!options.json && !options.ids)
      return { out: `The plan is in ${options.html}; open it in a browser to read or print it.\n`, code }
  }
  if (options.json) return { out: `${JSON.stringify(sheet, null, 2)}\n`, code }
  if (options.ids) return { out: idsOf(sheet), code }
  const text = planText(sheet, { why: options.why ?? false })
  return { out: options.plain ? plainText(text) : text, code }
}

function howOf({ support, search = 'usual' }: PlanCommandOptions): Omit<PlanOfJobOptions, 'goal' | 'failed'> {
  const wrong: string[] = []
  const carrier = support === 'stands' ? 'jack and stands' : support
  if (carrier !== undefined && carrier !== 'jack and stands' && carrier !== 'lift')
    wrong.push(`--support “${support}” is not known. Say “lift” or “stands”.`)
  if (!Object.hasOwn(budgets, search))
    wrong.push(`--search “${search}” is not known. Say “quick”, “usual” or “long”.`)
  if (wrong.length > 0) throw new BadInput(wrong)
  return {
    effort: { budget: budgets[search as keyof typeof budgets] },
    ...(carrier === undefined ? {} : { support: carrier as 'jack and stands' | 'lift' }),
  }
}

/** What was named on the command line; undefined leaves it to the log. */
function askedOf(
  { corners: { front, rear } }: SheetSources,
  { replace = [], open = [], failed = [], afresh = false, makeSafe }: PlanCommandOptions,
): Pick<PlanOfJobOptions, 'goal' | 'failed' | 'afresh'> {
  if (makeSafe !== undefined) {
    if (makeSafe !== 'stand' && makeSafe !== 'roll')
      throw new BadInput([`--make-safe “${makeSafe}” is not known. Say “stand” or “roll”.`])
    if (replace.length + open.length + failed.length > 0 || afresh)
      throw new BadInput(['--make-safe goes on from the record and finishes nothing: leave the others out.'])
    return { goal: { replace: [], make: `safe to ${makeSafe}` } }
  }
  if (replace.length + open.length + failed.length === 0) return { afresh }
  const assembly = assemblyOf(rear ? [front, rear] : [front])
  const { parts, joints } = assembly
  return {
    afresh,
    ...(replace.length + open.length > 0
      ? { goal: { replace: planIds(parts, replace, 'part'), open: planIds(joints, open, 'joint') } }
      : {}),
    ...(failed.length > 0 ? { failed: planFailures(assembly, failed) } : {}),
  }
}

const nothingPlanned = ({ troubles, choices }: PlanSheet): readonly string[] => [
  ...troubles,
  ...(choices.some(({ chosen }) => chosen)
    ? []
    : [`Name it with --replace ID. What wears here: ${choices.map(({ id }) => `“${id}”`).join(', ')}.`]),
]

/** The plan as a file to edit: one id a line, the words behind it. */
const idsOf = ({ bands }: PlanSheet): string =>
  bands
    .flatMap(({ station, lines }) => [`# ${station}`, ...lines.map(({ id, words }) => `${id}  # ${words}`)])
    .join('\n')
    .concat('\n')
