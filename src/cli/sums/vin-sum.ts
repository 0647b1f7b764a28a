import { vinHints } from '../../spec/index.ts'
import type { SumTopic } from './sum-answer.ts'

/** Whether a VIN was typed as it can be. */
export const vinSum: SumTopic = {
  name: 'vin',
  about: 'whether a VIN can be right as typed',
  needs: ['number'],
  may: [],
  example: 'vin number="0000 0000 9B123 4567"',
  work: (words) => {
    const { vin, fits, check, hints } = vinHints(words.get('number')!)
    const verdict = !fits
      ? 'it does not fit'
      : check?.agrees
        ? 'its check digit agrees'
        : 'its check digit does not agree'
    return {
      answer: [`${vin}: ${verdict}`, ...hints],
      numbers: [],
      formula: 'weighted sum of 17 characters, remainder by 11 in the ninth place',
      source: 'ISO 3779 (characters); 49 CFR 565.15(c) (check digit)',
      spread: ['none: characters; but one wrong VIN in eleven has a check digit that agrees by chance'],
      notes: ['A check digit is a hint only: it is not used everywhere.'],
    }
  },
}
