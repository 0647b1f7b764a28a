import { parseForce, parseLength, Refusal } from '../quantity/index.ts'
import type { CornerRefusal } from './parse-clock.ts'

/**
 * A rate of springing: a force for a length, "31 N/mm", "180 lbf/in".
 *
 *     rate = force / length
 *
 * @returns N/m, above zero
 * @throws {Refusal} `not-a-rate`; what the parts refuse, as the quantity room says it
 * @source definition
 * @example parseRate('31 N/mm') // 31000
 */
export function parseRate(text: string): number {
  const parts = /^(.*\d.*?)\s*(?:\/|\bper\b)\s*([^\d]+)$/.exec(text.trim())
  const rate = parts ? parseForce(parts[1]!) / parseLength(`1 ${parts[2]}`) : Number.NaN
  if (rate > 0 && Number.isFinite(rate)) return rate
  throw new Refusal<CornerRefusal>({
    code: 'not-a-rate',
    at: 'rate',
    given: text,
    sentence: `“${text}” is no force for a length above zero.`,
    remedy: 'Write it as a force for a length, such as "31 N/mm".',
  })
}
