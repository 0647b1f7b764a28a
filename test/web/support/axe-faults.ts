import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'

const axe = readFileSync(
  join(import.meta.dirname, '..', '..', '..', 'node_modules', 'axe-core', 'axe.min.js'),
  'utf8',
)

interface AxeFault {
  readonly id: string
  readonly impact: string
  readonly nodes: readonly { readonly html: string }[]
}

/** What axe-core finds against WCAG 2.2 A and AA on a page as it stands. */
export async function axeFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe)
  return page.evaluate(async () => {
    const { violations } = await (
      window as unknown as { axe: { run: (o: object) => Promise<{ violations: AxeFault[] }> } }
    ).axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] })
    return violations.map(
      ({ id, impact, nodes }) => `${impact} ${id}: ${nodes.map((n) => n.html).join(' | ')}`,
    )
  })
}
