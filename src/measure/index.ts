export type { Measured, Part, Shape } from './measured.ts'
