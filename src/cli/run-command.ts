import { Command, CommanderError } from 'commander'
import manifest from '../../package.json' with { type: 'json' }
import { Refusal } from '../quantity/index.ts'
import { boltsCommand } from './commands/bolts-command.ts'
import { carryCommands } from './commands/carry-commands.ts'
import { checkCommand } from './commands/check-command.ts'
import { type FindingsCommandOptions, findingsCommand } from './commands/findings-command.ts'
import { fitCommand } from './commands/fit-command.ts'
import { followUpsCommand } from './commands/follow-ups-command.ts'
import { type LayoutsOptions, layoutsCommand } from './commands/layouts-command.ts'
import { type LearnedOptions, learnedCommand } from './commands/learned-command.ts'
import { type PlanCommandOptions, planCommand } from './commands/plan-command.ts'
import { planHelp } from './commands/plan-help.ts'
import { posesCommand } from './commands/poses-command.ts'
import { readCommand } from './commands/read-command.ts'
import { readMethods } from './commands/read-methods.ts'
import { recordCommands } from './commands/record-commands.ts'
import { clampCommand, type JobOptions, movesCommand, sheetCommand } from './commands/sheet-command.ts'
import { sumCommand } from './commands/sum-command.ts'
import { BadInput, type ExitCode, type Outcome } from './files/outcome.ts'
import { sumHelp } from './sums/topics.ts'

const head = `From gauge readings to moves: what your gauges really say and how surely, how far to turn each adjuster, and how far to raise the arm before its bush bolts are final.`

const tail = `
Try it on the demo (all values in it are invented):
  axlewright sheet examples/port-unit-07/port-unit-07.job.json

It ends with 0 when all is fine, 1 when a limit or a hold point fails or is not proven, 2 when
something typed or in a file cannot be used.

The maker's service information and local inspection law stand above this tool. Never work
under a vehicle that a jack alone carries.`

const learnedFrom = [
  '--learned-from <JOB...>',
  'let the moves count on what moves did in these other jobs; the job itself is left out',
] as const

/**
 * Runs one command line and says how it ended. Output goes to standard output, complaints to standard error.
 *
 * @param words the command line without node and the script
 */
export async function runCommand(words: readonly string[]): Promise<ExitCode> {
  let code: ExitCode = 0
  const finish = (outcome: Outcome): void => {
    process.stdout.write(outcome.out)
    code = outcome.code
  }
  const program = new Command('axlewright')
    .description(head)
    .version(manifest.version, '-v, --version', 'which version this is')
    .addHelpText('after', tail)
    .showHelpAfterError('Type "axlewright --help" to see what can be asked.')
    .exitOverride()

  const onJob = (
    name: string,
    about: string,
    run: (job: string, options: JobOptions) => Promise<Outcome>,
  ): Command =>
    program
      .command(`${name} JOB`)
      .description(about)
      .option('--with <FILE...>', 'corner, spec or kit files to use before those beside the job')
      .option('--json', 'write it as JSON')
      .option('--us', 'inches, lbf·ft and psi instead of metric units')
      .action(async (job: string, options: JobOptions) => finish(await run(job, options)))

  onJob('sheet', 'the whole job on one sheet: readings, moves, clamp pose, cautions', sheetCommand)
    .option('--html <FILE>', 'write it as a page for reading and printing (A4 or Letter, one ink)')
    .option('--plain', 'plain ASCII drawings, for terminals that show boxes')
    .option(...learnedFrom)
  onJob(
    'moves',
    'how far to turn each adjuster, which way, and the chance to land inside',
    movesCommand,
  ).option(...learnedFrom)
  onJob('bolts', 'the bolt book: every joint, what is still open first and why', boltsCommand)
  onJob('clamp', 'how far to raise the arm before its bush bolts are final', clampCommand)
  onJob(
    'findings',
    'which part explains the readings: likely causes with evidence, what to check next, what to order',
    (job, options: FindingsCommandOptions) => findingsCommand(job, options),
  )
    .option('--round <N>', 'the round to judge; otherwise the first that was read')
    .option('--plain', 'plain ASCII, for terminals that show boxes')
  onJob(
    'fit',
    'the corner model fitted to what was measured: points, what moves do, what to measure next',
    fitCommand,
  )

  program
    .command('learned JOBS...')
    .description(
      'what moves did in these jobs, by vehicle, model and layout; how often the first ones ended inside',
    )
    .option('--with <FILE...>', 'corner, spec or kit files to use before those beside the jobs')
    .option('--json', 'write it as JSON')
    .option('--us', 'inches, lbf·ft and psi instead of metric units')
    .action(async (jobs: string[], options: LearnedOptions) => finish(await learnedCommand(jobs, options)))

  program
    .command('follow-ups JOB')
    .description('what is to be done after the handover: wheel nuts again, heights and angles again')
    .option('--calendar <FILE>', 'write it as a calendar file (.ics)')
    .action(async (job: string, options: { calendar?: string }) =>
      finish(await followUpsCommand(job, options)),
    )

  program
    .command('plan JOB')
    .description('what is done in which order, with what and why; or an order made by hand, judged')
    .option('--with <FILE...>', 'corner, spec or kit files to use before those beside the job')
    .option('--replace <ID...>', 'parts that come new; otherwise those that the log says are replaced')
    .option('--open <ID...>', 'joints that are opened')
    .option(
      '--failed <WHAT...>',
      'what went wrong, "JOINT: rounded head"; what was tried in vain after a comma: "JOINT: seized sleeve, soak, puller"',
    )
    .option('--support <WHAT>', 'lift or stands; otherwise a lift where the kit has one')
    .option('--afresh', 'from the sound vehicle, whatever the log says was done')
    .option('--make-safe <HOW>', 'only make it safe to stand or to roll, from the record: stand or roll')
    .option('--search <HOW>', 'how long an order is looked for: quick, usual or long', 'usual')
    .option('--judge <ORDER>', 'a file with an order of your own: every rule that it breaks, and its cost')
    .option('--ids', 'the ids of the actions, one a line, to edit and give to --judge')
    .option('--why', 'beside each line why it is there and what it waits for')
    .option('--html <FILE>', 'write it as a card to print (A4 or Letter, one ink)')
    .option('--json', 'write it as JSON')
    .option('--plain', 'plain ASCII marks, for terminals that show boxes')
    .addHelpText('after', planHelp)
    .action(async (job: string, options: PlanCommandOptions) => finish(await planCommand(job, options)))
  program
    .command('layouts [ID] [FILE]')
    .description('the layouts to start a corner model from; with an id, its file')
    .option('--overwrite', 'write over a file that is there')
    .option('--json', 'the list as JSON')
    .action(async (id: string | undefined, file: string | undefined, options: LayoutsOptions) =>
      finish(await layoutsCommand(id, file, options)),
    )
  program
    .command('read METHOD [WORDS...]')
    .description('what one gauge reading really says: value, spread and where the spread comes from')
    .option('--kit <FILE>', 'the kit that holds the gauges')
    .option('--json', 'write it as JSON')
    .addHelpText('after', readMethods)
    .action((method: string, given: string[], options: { kit?: string; json?: boolean }) =>
      finish(readCommand(method, given, options)),
    )
  program
    .command('sum QUESTION [WORDS...]')
    .description(
      'one question without a job: adapter, castle nut, caster, run-out, steering wheel, toe, tyre, VIN …',
    )
    .option('--json', 'write it as JSON')
    .addHelpText('after', sumHelp)
    .action((question: string, given: string[], options: { json?: boolean }) =>
      finish(sumCommand(question, given, options)),
    )
  program
    .command('check FILES...')
    .description(
      'look through corner, spec, kit and job files; every fault at once, with what would be right',
    )
    .action(async (files: string[]) => finish(await checkCommand(files)))
  program
    .command('poses FILE')
    .description('answer a file of pose cases, to hold the geometry against other programs')
    .action((file: string) => finish(posesCommand(file)))
  recordCommands(program, finish)
  carryCommands(program, finish)

  try {
    await program.parseAsync([...words], { from: 'user' })
    return code
  } catch (error) {
    return complain(error)
  }
}

function complain(error: unknown): ExitCode {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2
  if (error instanceof BadInput) {
    process.stderr.write(`${error.lines.join('\n')}\n`)
    return 2
  }
  if (error instanceof Refusal) {
    process.stderr.write(`${error.sentence}\n${error.remedy}\n`)
    return 2
  }
  process.stderr.write(
    `This is a mistake in Axlewright, not in what you typed. Please report it with these lines:\n${(error as Error)?.stack ?? String(error)}\n`,
  )
  return 2
}
