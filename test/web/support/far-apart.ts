import type { Page } from 'playwright-core'

/** How large what is touched must be, in CSS pixels. */
interface Sizes {
  /** Selector of the large ones, and their least height. */
  readonly large: string
  readonly least: number
  /** All others. */
  readonly others: number
  readonly gap: number
}

/** Buttons, fields and links that are too small, or too near to another; none when all is well. */
export const tooSmallOrNear = (page: Page, sizes: Sizes): Promise<readonly string[]> =>
  page.evaluate(({ large, least, others, gap }) => {
    const all = [...document.querySelectorAll<HTMLElement>('button, input, a[href], summary')].filter(
      (one) => one.offsetParent !== null && !one.classList.contains('page-skip'),
    )
    const boxes = all.map((one) => one.getBoundingClientRect())
    const name = (one: HTMLElement) => one.textContent || one.tagName
    const small = all.flatMap((one, i) => {
      const { width, height } = boxes[i]!
      const wanted = one.matches(large) ? least : others
      return height < wanted || width < Math.min(wanted, 48) ? [`${name(one)}: ${width} × ${height}`] : []
    })
    const near = all.flatMap((one, i) =>
      all.slice(i + 1).flatMap((other, k) => {
        const [a, b] = [boxes[i]!, boxes[i + 1 + k]!]
        if (one.contains(other) || other.contains(one)) return []
        const x = Math.max(a.left, b.left) - Math.min(a.right, b.right)
        const y = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom)
        return Math.max(x, y) < gap - 0.5 ? [`${name(one)} | ${name(other)}: ${Math.max(x, y)}`] : []
      }),
    )
    return [...small, ...near]
  }, sizes)
