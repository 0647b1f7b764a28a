import type { SheetBolt } from '../../../sheet/index.ts'
import { upper } from './upper.ts'

/** A sentence about a joint without the joint's name, where that stands in the same row already. */
export function withoutName(sentence: string, { name, wheel }: SheetBolt): string {
  const called = `${name} of the ${wheel} wheel: `
  if (sentence.slice(0, called.length).toLowerCase() !== called.toLowerCase()) return sentence
  return upper(sentence.slice(called.length))
}
