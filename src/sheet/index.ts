export type * from './sheet.ts'
