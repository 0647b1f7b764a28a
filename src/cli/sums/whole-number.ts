import { BadInput } from '../files/outcome.ts'

/** A count as it was typed: "6". */
export function wholeNumber(text: string, at: string): number {
  if (/^\s*\d{1,4}\s*$/.test(text)) return Number(text)
  throw new BadInput([`${at} is “${text}”. Write a whole number, such as ${at}=6.`])
}
