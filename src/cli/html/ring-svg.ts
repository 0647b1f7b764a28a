import type { DoingDrawing } from '../../sheet/index.ts'

const centre = 30
const radius = 20

/** A ring of fasteners with the order in which they are tightened. */
export function ringSvg(drawing: DoingDrawing | null): string {
  if (drawing?.kind !== 'ring') return ''
  const { order, count } = drawing
  const bolts = order.map((place, turn) => {
    const angle = (2 * Math.PI * place) / count
    const [x, y] = [centre + radius * Math.sin(angle), centre - radius * Math.cos(angle)]
    return `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="8" stroke-width="1" fill="white"/><text x="${x.toFixed(1)}" y="${(y + 3.4).toFixed(1)}" text-anchor="middle">${turn + 1}</text>`
  })
  return `<svg class="ring" viewBox="0 0 60 60" role="img" aria-label="tightened in the order ${order.map((place) => place + 1).join(', ')}" fill="none" stroke="currentColor"><circle cx="${centre}" cy="${centre}" r="${radius}" stroke-width="0.5"/>${bolts.join('')}</svg>`
}
