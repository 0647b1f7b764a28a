import { glued } from '../../drawing/glued.ts'

/** A sentence whose **marked** words stand bold. */
export function BoldWords({ text }: { text: string }) {
  return glued(text)
    .split(/\*\*(.+?)\*\*/)
    .map((part, i) =>
      // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one sentence keep their places
      i % 2 === 1 ? <strong key={i}>{part}</strong> : part,
    )
}
