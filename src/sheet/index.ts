export type * from './bolt-sheet.ts'
export type * from './sheet.ts'
export { sheetFrom } from './sheet-from.ts'
export type { SheetOptions, SheetSources } from './sources.ts'
