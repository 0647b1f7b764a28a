export type { BackupList } from './backup-schema.ts'
export { type BegunWorkshop, beginWorkshop } from './begin-workshop.ts'
export { clockNow } from './clock-now.ts'
export { fileStore } from './file-store.ts'
export { folderName } from './folder-name.ts'
export { jobFolder } from './job-folder.ts'
export type { Appended, KeptJob, KeptLog, LogStore, SpoiltLine, Whose, Writing } from './log-store.ts'
export { type OpenedJob, openJob } from './open-job.ts'
export { type OwnWorkshop, ownWorkshop, workshopJob } from './own-workshop.ts'
export { pinAll } from './pin-all.ts'
export {
  erasePrivate,
  keepPrivate,
  type PrivateBeside,
  privateBeside,
  strayPrivate,
} from './private-beside.ts'
export { randomSeed } from './random-seed.ts'
export { type BackedUpLog, type Backup, readBackup } from './read-backup.ts'
export { type RestoredLog, restoreBackup } from './restore-backup.ts'
export { rootFromPaper, rootPaper } from './root-paper.ts'
export type { StoreRefusal } from './store-refusal.ts'
export { takeIn } from './take-in.ts'
export { type VerifiedLog, verifyKept } from './verify-kept.ts'
export { type WholeFile, wholeFile } from './whole-file.ts'
export { type BackupWritten, type LogToKeep, writeBackup } from './write-backup.ts'
export { writeWhole } from './write-whole.ts'
