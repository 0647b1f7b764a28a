import { useEffect, useRef } from 'react'
import type { PlanSheet, PlanSheetLine, SheetCorner } from '../../../sheet/index.ts'
import { useMatch } from '../../drawing/use-match.ts'
import { type LineStep, movedLine } from '../../state/moved-line.ts'
import type { OpenPlan } from '../../state/use-plan.ts'
import { upper } from '../bolts/upper.ts'
import { cornerOfLine } from './corner-of-line.ts'
import { PlanDrawn } from './plan-drawn.tsx'
import { PlanLine } from './plan-line.tsx'

/** The lines of the plan, in bands: how the vehicle stands, and what is done while it does. */
export function PlanBands({
  plan,
  sheet,
  corners,
  open,
  onOpen,
  onFailed,
}: {
  plan: OpenPlan
  sheet: PlanSheet
  corners: readonly SheetCorner[]
  open: string | null
  onOpen: (id: string | null) => void
  onFailed: (line: PlanSheetLine, what: string) => void
}) {
  const focus = useRef<{ id: string; step: LineStep } | null>(null)
  const list = useRef<HTMLDivElement>(null)
  // A line that went to another band is drawn anew there: the button that moved it keeps the focus.
  useEffect(() => {
    const at = focus.current
    if (!at || plan.working) return
    focus.current = null
    const line = list.current?.querySelector(`[data-line="${CSS.escape(at.id)}"]`)
    const button = line?.querySelector<HTMLButtonElement>(`[data-step="${at.step}"]`)
    ;(button?.disabled ? line?.querySelector<HTMLButtonElement>('.plan-line-open') : button)?.focus()
  })
  // Where there is no room beside the lines, the drawing stands in the line that is opened.
  const narrow = !useMatch('(min-width: 1180px)')
  const bands = sheet.bands.map(({ lines }) => lines.map(({ id }) => id))
  const order = bands.flat()
  const move = (id: string, step: LineStep) => {
    if (plan.working) return
    focus.current = { id, step }
    plan.reorder(movedLine(bands, id, step))
  }
  let number = 0
  return (
    <div ref={list} className="plan-bands">
      {sheet.bands.map(({ station, lines }, band) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two bands may say the same, and a band is its place
        <section key={band} className="plan-band" aria-label={`Station ${band + 1}: ${station}`}>
          <h3>
            <span className="plan-station">{band + 1}</span> {upper(station)}
          </h3>
          <ol>
            {lines.map((line) => (
              <PlanLine
                key={line.id}
                line={line}
                number={++number}
                open={line.id === open}
                first={line.id === order[0]}
                last={line.id === order.at(-1)}
                onOpen={() => onOpen(line.id === open ? null : line.id)}
                onGo={(id) => {
                  onOpen(id)
                  goTo(id)
                }}
                onMove={move}
                onFailed={onFailed}
                drawn={narrow && line.id === open ? drawnOf(corners, line) : null}
              />
            ))}
          </ol>
        </section>
      ))}
    </div>
  )
}

function drawnOf(corners: readonly SheetCorner[], line: PlanSheetLine) {
  const corner = line.letter === null ? null : cornerOfLine(corners, line)
  return corner && <PlanDrawn corner={corner} letter={line.letter} />
}

/** Brings a line before the eye, and the focus to it. */
export function goTo(id: string): void {
  const line = document.querySelector(`[data-line="${CSS.escape(id)}"]`)
  line?.scrollIntoView({ block: 'center' })
  line?.querySelector<HTMLButtonElement>('.plan-line-open')?.focus({ preventScroll: true })
}
