import { type ComponentProps, type ReactNode, useState } from 'react'
import { CornerDrawing } from './corner-drawing.tsx'
import type { CornerView } from './corner-view.ts'

const views: readonly (readonly [CornerView, string])[] = [
  ['front', 'Front'],
  ['side', 'Side'],
  ['plan', 'Plan'],
]

/** A corner with its title, seen from the side that is chosen; its key stands below. */
export function CornerViews({
  label,
  className,
  children,
  ...drawing
}: Omit<ComponentProps<typeof CornerDrawing>, 'view'> & {
  label: string
  className: string
  children: ReactNode
}) {
  const [view, setView] = useState<CornerView>('front')
  return (
    <section className={className} aria-label={label}>
      <h2>{drawing.corner.title}</h2>
      <fieldset className="choice">
        <legend className="unseen">View</legend>
        {views.map(([one, word]) => (
          <button key={one} type="button" aria-pressed={one === view} onClick={() => setView(one)}>
            {word}
          </button>
        ))}
      </fieldset>
      <CornerDrawing {...drawing} view={view} />
      {children}
    </section>
  )
}
