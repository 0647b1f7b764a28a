import type { Plan } from '../plan/index.ts'
import { planTimeWords } from './plan-time-words.ts'

/** The way that nearly won, in words: what it costs more, what it does besides, what it spares. */
export function planAlternatives({ needed: { alternative } }: Plan): readonly string[] {
  if (alternative === null) return []
  const { extraMinutes, more, less } = alternative
  const cost =
    extraMinutes < 1 ? 'Another way takes as long' : `Another way takes ${planTimeWords(extraMinutes)} more`
  const besides = more.length > 0 ? `: ${more.join('; ')}` : ''
  const spares = less.length > 0 ? `. It spares: ${less.join('; ')}` : ''
  return [`${cost}${besides}${spares}.`]
}
