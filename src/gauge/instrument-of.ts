import { gaugeRefusal } from './gauge-refusal.ts'
import type { Instrument } from './instruments.ts'

type Kinds = Instrument['kind']

/** The instrument of that id, which must be of one of these kinds. */
export function instrumentOf<K extends Kinds>(
  instruments: readonly Instrument[],
  id: string,
  kinds: readonly K[],
): Extract<Instrument, { readonly kind: K | Kinds }> & { readonly kind: K } {
  const found = instruments.find((instrument) => instrument.id === id)
  if (!found)
    throw gaugeRefusal(
      'no-instrument',
      id,
      id,
      `There is no gauge “${id}” in the kit.`,
      'Add it to the kit with its errors, or name another.',
    )
  if (!(kinds as readonly Kinds[]).includes(found.kind))
    throw gaugeRefusal(
      'wrong-instrument',
      id,
      found.kind,
      `“${found.name}” is a ${found.kind}; this reading needs ${kinds.join(' or ')}.`,
      'Name the gauge that was used.',
    )
  return found as Extract<Instrument, { readonly kind: K | Kinds }> & { readonly kind: K }
}
