export { posesOf } from './poses-of.ts'
