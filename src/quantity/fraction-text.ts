import { quantityRefusal } from './quantity-refusal.ts'

/** The nearest fraction in the given denominators, lowest terms: "5/12", "−1 1/2", "2", "0". */
export function fractionText(
  value: number,
  { denominators, sign = false }: { denominators: readonly number[]; sign?: boolean | undefined },
): string {
  if (!Number.isFinite(value))
    throw quantityRefusal({
      code: 'not-finite',
      at: 'value',
      given: String(value),
      sentence: `${value} is not a number that can be printed.`,
      remedy: 'Report this: the computation should have refused before.',
    })
  if (denominators.length === 0 || denominators.some((d) => !Number.isInteger(d) || d < 1))
    throw quantityRefusal({
      code: 'bad-style',
      at: 'denominators',
      given: denominators.join(', '),
      sentence: 'A fraction needs whole denominators from 1 up.',
      remedy: 'Give the denominators, 12 for turns or 32 for inches.',
    })
  const size = Math.abs(value)
  let best = { over: 0, under: 1, error: Number.POSITIVE_INFINITY }
  for (const under of [...denominators].sort((a, b) => a - b)) {
    const over = Math.round(size * under)
    const error = Math.abs(over / under - size)
    if (error < best.error) best = { over, under, error }
  }
  const common = divisor(best.over, best.under)
  const [over, under] = [best.over / common, best.under / common]
  const whole = Math.floor(over / under)
  const rest = over % under
  const digits = rest === 0 ? `${whole}` : whole === 0 ? `${rest}/${under}` : `${whole} ${rest}/${under}`
  const mark = over === 0 ? '' : value < 0 ? '−' : sign ? '+' : ''
  return mark + digits
}

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b))
