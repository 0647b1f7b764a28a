export type { Appended, KeptJob, KeptLog, LogStore, SpoiltLine, Whose, Writing } from '../log-store.ts'
export type { StoreRefusal } from '../store-refusal.ts'
export { browserStore } from './browser-store.ts'
