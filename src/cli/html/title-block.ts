import type { Sheet } from '../../sheet/index.ts'
import { htmlText } from './html-text.ts'

/** The title block that stands on each page. */
export function titleBlock({ title }: Sheet, page: string): string {
  const field = (name: string, text: string) => `<div><small>${name}</small>${htmlText(text)}</div>`
  return `<header><div><b>${htmlText(title.vehicle)}</b><br>${htmlText(title.workshop)}</div>${field('job', title.job)}${field('page', page)}<div><small>readings, values</small>${htmlText(title.round)}<br>${htmlText([title.method, title.source].filter(Boolean).join(' · '))}</div></header>`
}
