export { type BoltBookSources, type BoltLine, boltBook, type JointState } from './bolt-book.ts'
export { inCausalOrder } from './causal-order.ts'
export { checkTogether, type NamedFile } from './check-together.ts'
export { clearedBy } from './cleared-by.ts'
export { type Coverage, coverageOf } from './coverage-of.ts'
export { type EntryData, type EntryKind, entryKinds } from './entries-schema.ts'
export type { Entry, Job } from './entry.ts'
export { foldJob } from './fold-job.ts'
export { foldVersion } from './fold-version.ts'
export { headsOf } from './heads-of.ts'
export { type Beside, jobAgainst } from './job-against.ts'
export { type JobFile, jobSchema } from './job-schema.ts'
export type {
  AsFoundFact,
  HeightFact,
  JobState,
  MoveFact,
  PlayFact,
  ReadingFact,
  RenewedFact,
  Round,
  Setting,
  Trouble,
} from './job-state.ts'
export { type JointPlace, jointPlaces } from './joint-places.ts'
export type { JointRecord, TightenedFact } from './joint-record.ts'
export { lacksHeight } from './lacks-height.ts'
export { withReferences } from './numbered.ts'
export { personalMembers } from './personal-members-schema.ts'
export { photosNamed } from './photos-named.ts'
export { commitmentIn, tokenOf } from './private-token.ts'
export type { PrivateValue } from './private-value.ts'
export { type AnyFile, readAny } from './read-any.ts'
export { readJob } from './read-job.ts'
export { readingsCsv, readReadingsCsv, type TakenReadings } from './readings-csv.ts'
export type { Position, RequiredState } from './required-state.ts'
export { isSealed, type SealedEntry } from './sealed-entry.ts'
export type { TypedSetting } from './setting-schema.ts'
export { type FormatName, sniffFormat } from './sniff-format.ts'
export { type Stand, standOf } from './stand-of.ts'
export { standOfAxle } from './stand-of-axle.ts'
export { stateByRules } from './state-by-rules.ts'
export type { ToDo, ToDoRule } from './to-do.ts'
export type { Told, Typing } from './told.ts'
export { type WheelName, wheelNames, wheelPlace } from './wheel-name.ts'
export { type FieldCorrection, withCorrection } from './with-correction.ts'
export { type PersonalPlace, withPersonal } from './with-personal.ts'
export { writeJob } from './write-job.ts'
