export { type PosesAnswer, posesOf } from './poses-of.ts'
