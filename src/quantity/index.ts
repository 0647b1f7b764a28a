export { Refusal, type RefusalFacts } from './refusal.ts'
export * from './tags.ts'
