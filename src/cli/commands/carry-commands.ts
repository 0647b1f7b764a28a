import type { Command } from 'commander'
import type { Outcome } from '../files/outcome.ts'
import { type BackupOptions, backupCommand } from './backup-command.ts'
import { type CarryOptions, carryCommand } from './carry-command.ts'
import { type PhotoOptions, photoCommand } from './photo-command.ts'
import { type ReadingsOptions, readingsCommand } from './readings-command.ts'
import { type RestoreOptions, restoreCommand } from './restore-command.ts'
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
  program
    .command('backup FILE [PLACES...]')
    .description(
      'all job folders at these places (or here), and the workshop’s log, as one file that verifies',
    )
    .option('--with-keys', 'this device’s SECRET key as well: whoever has the file can then sign as it')
    .option('--overwrite', 'write over a file that is there')
    .addHelpText('after', backupHelp)
    .action(async (file: string, places: string[], options: BackupOptions) =>
      finish(await backupCommand(file, places, options)),
    )
  program
    .command('restore FILE')
    .description('look a backup through from end to end, then put it back; nothing is written over')
    .option('--to <FOLDER>', 'where the job folders stand, or will stand')
    .option('--check', 'look it through, and write nothing')
    .option('--with-keys', 'put the device’s secret key back, where there is none')
    .addHelpText('after', backupHelp)
    .action(async (file: string, options: RestoreOptions) => finish(await restoreCommand(file, options)))
}

const backupHelp = `
  axlewright backup /stick/2026-03-14.zip jobs
  axlewright restore /stick/2026-03-14.zip --check
  axlewright restore /stick/2026-03-14.zip --to jobs

A backup is refused when one bit of it was changed, with the file in which it is. What is there is
never written over: entries and files of the backup come to it, and what was erased stays erased.
Ended in the middle, the same command again ends the work. Exit 1: something was left out.
`

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
