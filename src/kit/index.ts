export { type Kit, type KitFile, kitSchema } from './kit-schema.ts'
export { readKit } from './read-kit.ts'
export { writeKit } from './write-kit.ts'
