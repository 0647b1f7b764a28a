import type { Verdict } from '../../sheet/index.ts'

/** How something stands, as a shape: the word always stands beside it. */
export type PaperState = Verdict | 'done' | 'open'

const ink = '#17212B'
const frame = `<rect x="1" y="1" width="8" height="8" fill="none" stroke="${ink}" stroke-width="1"/>`
const shapes: Readonly<Record<PaperState, string>> = {
  inside: `<rect x="1" y="1" width="8" height="8" fill="${ink}" stroke="${ink}" stroke-width="1"/>`,
  done: `<rect x="1" y="1" width="8" height="8" fill="${ink}" stroke="${ink}" stroke-width="1"/>`,
  'inside, not proven': `<rect x="1" y="1" width="4" height="8" fill="${ink}"/>${frame}`,
  'outside, not proven': `<path d="M1 5L5 1M1 9L9 1M5 9L9 5" stroke="${ink}" stroke-width="0.8"/>${frame}`,
  outside: `<path d="M1 1L9 9M9 1L1 9" stroke="${ink}" stroke-width="1.6"/>`,
  'no limit': `<circle cx="5" cy="5" r="1.6" fill="none" stroke="${ink}" stroke-width="0.8"/>`,
  open: frame,
}

/** Filled, half, hatched, crossed or open. */
export const stateSvg = (state: PaperState): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10" width="10" height="10" aria-hidden="true">${shapes[state]}</svg>`
