import type { Command } from 'commander'
import type { Outcome } from '../files/outcome.ts'
import type { ByRoot } from '../record/speak.ts'
import { type CorrectOptions, correctCommand } from './correct-command.ts'
import { type DecideOptions, decideCommand } from './decide-command.ts'
import { type EraseOptions, eraseCommand } from './erase-command.ts'
import { type MergeOptions, mergeCommand } from './merge-command.ts'
import { type PaperOptions, paperCommand } from './paper-command.ts'
import { keepsPersonal, makePerson, personLeft } from './people-command.ts'
import { type ProveOptions, proveCommand } from './prove-command.ts'
import { decideHelp, eraseHelp, paperHelp, recordHelp, workshopHelp } from './record-help.ts'
import { type SealOptions, sealCommand } from './seal-command.ts'
import { type SignOffOptions, signOffCommand } from './sign-off-command.ts'
import { type VerifyOptions, verifyCommand } from './verify-command.ts'
import { certifyDevice, joinWorkshop, listWorkshop, makeWorkshop, revokeDevice } from './workshop-command.ts'

/** The commands that keep the record: seal, merge, sign off, prove, verify, and the workshop's own log. */
export function recordCommands(program: Command, finish: (outcome: Outcome) => void): void {
  program
    .command('seal JOB')
    .description('seal what a job file says, and keep it in the job’s folder, synced to disk')
    .requiredOption('--person <SIGN>', 'whose hand: initials or a sign, no full name')
    .option('--in <FOLDER>', 'where job folders stand; otherwise beside the job file')
    .option('--with <FILE...>', 'corner, spec or kit files to keep with it, before those beside the job')
    .option('--add', 'all unsealed entries of the file are new, whatever was taken in before')
    .option('--json', 'write it as JSON')
    .addHelpText('after', recordHelp)
    .action(async (job: string, options: SealOptions) => finish(await sealCommand(job, options)))
  program
    .command('merge FILES...')
    .description('unite the files of one job into a new one; what they say against each other is listed')
    .requiredOption('--to <PLACE>', 'the new one: a file that ends in .job.json, or a job folder')
    .option('--json', 'write it as JSON')
    .addHelpText('after', recordHelp)
    .action(async (files: string[], options: MergeOptions) => finish(await mergeCommand(files, options)))
  program
    .command('decide JOB')
    .description('what the log says two ways, with its values; with --keep one of them holds')
    .option('--keep <ENTRY>', 'the entry that holds: its place as listed, or the beginning of its id')
    .option('--conflict <N>', 'which one of the list, where there are more')
    .option('--why <TEXT>', 'why')
    .option('--person <SIGN>', 'whose hand: initials or a sign, no full name')
    .option('--json', 'the list as JSON')
    .addHelpText('after', decideHelp)
    .action(async (job: string, options: DecideOptions) => finish(await decideCommand(job, options)))
  program
    .command('correct JOB ENTRY FIELD TEXT')
    .description('type one field of an entry over, as an entry of its own; what was sealed stays')
    .requiredOption('--person <SIGN>', 'whose hand: initials or a sign, no full name')
    .option('--why <TEXT>', 'why')
    .addHelpText('after', decideHelp)
    .action(async (job: string, entry: string, field: string, text: string, options: CorrectOptions) =>
      finish(await correctCommand(job, [entry, field, text], options)),
    )
  program
    .command('erase JOB [FIELDS...]')
    .description('take what is personal out of a job’s folder or a proof; the log and its seals stay')
    .option('--due', 'JOB is a folder of job folders: those whose time is over, as the workshop said')
    .option('--json', 'write it as JSON')
    .addHelpText('after', eraseHelp)
    .action(async (job: string, fields: string[], options: EraseOptions) =>
      finish(await eraseCommand(job, fields, options)),
    )
  program
    .command('sign-off JOB')
    .description('sign the work off: all that is in the job’s folder, and the models and rules behind it')
    .requiredOption('--person <SIGN>', 'whose hand: initials or a sign, no full name')
    .option('--remark <TEXT>', 'what is said with it')
    .option('--with <FILE...>', 'corner, spec or kit files by which the work was done')
    .addHelpText('after', recordHelp)
    .action(async (job: string, options: SignOffOptions) => finish(await signOffCommand(job, options)))
  program
    .command('prove JOB')
    .description('write the job as one file that anybody can verify anywhere')
    .option('--to <FILE>', 'the file; otherwise NUMBER.proof.json beside the job')
    .option('--overwrite', 'write over a file that is there')
    .addHelpText('after', recordHelp)
    .action(async (job: string, options: ProveOptions) => finish(await proveCommand(job, options)))
  program
    .command('verify FILE')
    .description('a proof, a sealed job file or a job folder: is it intact, whose hands, what is covered')
    .option('--root <FINGERPRINT>', 'the workshop’s root as on the paper; otherwise this device’s workshop’s')
    .option('--json', 'write it as JSON')
    .addHelpText('after', recordHelp)
    .action(async (file: string, options: VerifyOptions) => finish(await verifyCommand(file, options)))
  program
    .command('paper JOB_OR_PROOF')
    .description('the proof sheet on paper: before and after, bolt book, what is open, whose hands')
    .option('--html <FILE>', 'write it as a page for reading and printing (one ink)')
    .option('--pdf <FILE>', 'write it as a PDF')
    .option('--letter', 'for Letter instead of A4')
    .option('--root <FINGERPRINT>', 'the workshop’s root as on the paper; otherwise this device’s workshop’s')
    .option('--with <FILE...>', 'corner, spec or kit files to use before those that it carries or names')
    .option('--us', 'inches, lbf·ft and psi instead of metric units')
    .option(
      '--erased',
      'a copy without what is personal: VIN, plate, owner, driver, telephone, who said and who was told',
    )
    .option('--overwrite', 'write over a file that is there')
    .addHelpText('after', paperHelp)
    .action(async (job: string, options: PaperOptions) => finish(await paperCommand(job, options)))
  workshopCommands(program, finish)
}

function workshopCommands(program: Command, finish: (outcome: Outcome) => void): void {
  const workshop = program
    .command('workshop')
    .description('the workshop: whose devices may sign for it')
    .addHelpText('after', workshopHelp)
  workshop
    .command('make NAME')
    .description('make a workshop, with this device as its owner; its root is shown once, for paper')
    .option('--device <NAME>', 'how this device is called', 'first device')
    .action(async (name: string, options: { device: string }) => finish(await makeWorkshop(name, options)))
  workshop
    .command('list')
    .description('the workshop, its root, its devices, and this one')
    .option('--json', 'write it as JSON')
    .action(async (options: { json?: boolean }) => finish(await listWorkshop(options)))
  workshop
    .command('certify KEY NAME')
    .description('let a device sign; only an owner can, or the root')
    .option('--owner', 'it may certify and revoke others as well')
    .option('--by-root', 'said by the root, whose secret is typed or piped in')
    .action(async (key: string, name: string, options: ByRoot & { owner?: boolean }) =>
      finish(await certifyDevice(key, name, options)),
    )
  workshop
    .command('revoke DEVICE')
    .description('a device that is lost, or left: by its name, fingerprint or key')
    .requiredOption('--why <TEXT>', 'why')
    .option('--by-root', 'said by the root, whose secret is typed or piped in')
    .action(async (device: string, options: ByRoot & { why: string }) =>
      finish(await revokeDevice(device, options)),
    )
  workshop
    .command('person SIGN')
    .description('a person with a short code of four to eight digits, which is typed or piped in')
    .option('--role <ROLE>', 'owner or technician', 'technician')
    .action(async (sign: string, options: { role: string }) => finish(await makePerson(sign, options)))
  workshop
    .command('left SIGN')
    .description('a person who left')
    .requiredOption('--why <TEXT>', 'why')
    .option('--by-root', 'said by the root, whose secret is typed or piped in')
    .action(async (sign: string, options: ByRoot & { why: string }) =>
      finish(await personLeft(sign, options)),
    )
  workshop
    .command('keeps MONTHS')
    .description('for how many months after a job what is personal is kept')
    .action(async (months: string) => finish(await keepsPersonal(months)))
  workshop
    .command('join FILE')
    .description('take in a workshop’s log (log.jsonl, or a proof), or what is newer in it')
    .requiredOption('--root <FINGERPRINT>', 'the workshop’s root as on the paper')
    .action(async (file: string, options: { root: string }) => finish(await joinWorkshop(file, options)))
}
