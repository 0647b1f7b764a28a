import type { StartingLayout } from '../../../corner/index.ts'

/** Layouts to start from: rows to choose one of. */
export function LayoutChoice({
  title,
  none,
  layouts,
  chosen,
  onChoose,
}: {
  title: string
  /** Words for choosing none, where that can be. */
  none?: string
  layouts: readonly Pick<StartingLayout, 'id' | 'name' | 'says'>[]
  chosen: string | null
  onChoose: (id: string | null) => void
}) {
  const row = (id: string | null, name: string, says: string) => (
    <li key={id ?? 'none'}>
      <button
        type="button"
        className="bare layout-row"
        aria-pressed={chosen === id}
        onClick={() => onChoose(id)}
      >
        <strong>{name}</strong>
        <span>{says}</span>
      </button>
    </li>
  )
  return (
    <section aria-label={title}>
      <h2>{title}</h2>
      <ul className="layouts">
        {layouts.map(({ id, name, says }) => row(id, name, says))}
        {none && row(null, none, '')}
      </ul>
    </section>
  )
}
