import type { Command } from 'commander'
import type { Outcome } from '../files/outcome.ts'
import { type PhotoOptions, photoCommand } from './photo-command.ts'

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
}
