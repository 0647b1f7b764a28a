import type { SheetMove } from '../../sheet/index.ts'

const centre = 40
const radius = 28

const onDial = (clock: number, r: number): string =>
  `${(centre + r * Math.sin(clock)).toFixed(1)} ${(centre - r * Math.cos(clock)).toFixed(1)}`

/** An eccentric's washer as the person sees it: where its mark stands, and where it is turned to. */
export function dialSvg({ dial, amount }: SheetMove): string {
  if (!dial) return ''
  const sweep = dial.to > dial.from ? 1 : 0
  return `<svg class="dial" viewBox="0 0 80 80" role="img" aria-label="${amount}" fill="none" stroke="currentColor">
<path d="M${centre} 4V76M4 ${centre}H76" stroke-width="0.4" stroke-dasharray="6 2 1 2"/>
<circle cx="${centre}" cy="${centre}" r="${radius}" stroke-width="1.5"/>
<path d="M${centre} ${centre}L${onDial(dial.from, radius)}" stroke-width="1.5"/>
<path d="M${centre} ${centre}L${onDial(dial.to, radius)}" stroke-width="1.5" stroke-dasharray="3 2"/>
<path d="M${onDial(dial.from, radius + 5)}A${radius + 5} ${radius + 5} 0 0 ${sweep} ${onDial(dial.to, radius + 5)}" stroke-width="2"/>
<circle cx="${onDial(dial.to, radius + 5).replace(' ', '" cy="')}" r="2.5" fill="currentColor"/></svg>`
}
