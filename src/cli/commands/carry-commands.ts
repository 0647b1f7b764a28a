import type { Command } from 'commander'
import type { Outcome } from '../files/outcome.ts'
import { type CarryOptions, carryCommand } from './carry-command.ts'
import { type PhotoOptions, photoCommand } from './photo-command.ts'
import { type ReadingsOptions, readingsCommand } from './readings-command.ts'
import { type SpecOptions, specCommand } from './spec-command.ts'

/** The commands that carry a job from place to place: its photos, one file of it, tables, backups. */
export function carryCommands(program: Command, finish: (outcome: Outcome) => void): void {
  program
    .command('photo JOB FILE')
    .description('keep a photo in the job’s folder, without its place and time, and name it in the log')
    .requiredOption('--words <TEXT>', 'what it shows')
    .requiredOption('--person <SIGN>', 'whose hand: initials or a sign, no full name')
    .option('--joint <ID>', 'the joint that it shows')
    .option('--wheel <WHEEL>', 'at which wheel: "front left" …')
    .option('--part <ID>', 'the part that it shows')
    .option('--shows <ENTRY>', 'the entry that it goes with: its number in the log, or its id')
    .option('--json', 'write it as JSON')
    .action(async (job: string, file: string, options: PhotoOptions) =>
      finish(await photoCommand(job, file, options)),
    )
  program
    .command('carry JOB')
    .description('write the job with its photos as one file, for another device or a stick')
    .option('-o, --to <FILE>', 'the file; otherwise NUMBER.job.zip beside the job')
    .option('--overwrite', 'write over a file that is there')
    .addHelpText('after', carryHelp)
    .action(async (job: string, options: CarryOptions) => finish(await carryCommand(job, options)))
  program
    .command('readings JOB')
    .description('all readings of a job as a table (CSV), one a line; or take those of a table in')
    .option('--csv <FILE>', 'write the table there; otherwise it is printed')
    .option('--take <FILE>', 'take the readings of a table into the last round; all of them or none')
    .option('--person <SIGN>', 'whose hand, when they are taken into a job’s folder')
    .option('--to <FILE>', 'the new job file, when they are taken into a job file')
    .option('--semicolons', 'for spreadsheets with a decimal comma')
    .option('--overwrite', 'write over a file that is there')
    .addHelpText('after', tableHelp)
    .action(async (job: string, options: ReadingsOptions) => finish(await readingsCommand(job, options)))
  program
    .command('spec FILE')
    .description('a spec sheet as a table (CSV); or, of a .csv file, the spec sheet that it says')
    .option('--to <FILE>', 'write it there; otherwise it is printed')
    .option('--semicolons', 'for spreadsheets with a decimal comma')
    .option('--overwrite', 'write over a file that is there')
    .addHelpText('after', tableHelp)
    .action((file: string, options: SpecOptions) => finish(specCommand(file, options)))
}

const carryHelp = `
On the other device it is taken in as any copy of the job is:
  axlewright merge 7-0412.job.zip --to 7-0412
verify, prove, paper and the others read it as well. The same job gives the same bytes each time;
a file that was cut off or changed on its way is refused, and says where. It ends with 1 when a
photo that the job names is not with it.
`

const tableHelp = `
A unit stands in the head, in brackets, or in the cell: "value (mm)", "441 mm". Tables with
semicolons and decimal commas are read as they are. When a cell cannot be used, each such cell is
named by line and column, and nothing is taken in.
`
