import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, test } from 'vitest'
import type { SheetClamp } from '../../src/sheet/index.ts'
import { ClampBlock } from '../../src/web/sheets/angles/clamp-block.tsx'

const number = { value: 0.44, low: 0.43, high: 0.45, text: '440 mm', spread: '± 9 mm' }
const clamp: SheetClamp = {
  side: 'right',
  title: 'Clamp pose, right front',
  target: number,
  targetWhy: 'the sheet’s height counts',
  raise: number,
  armTurn: null,
  bushes: [],
  cautions: ['Never under the vehicle on a jack alone.'],
}
const shown = (block: SheetClamp) =>
  renderToStaticMarkup(createElement(ClampBlock, { clamp: block, job: '1' }))

describe('the clamp pose', () => {
  test('WE23 shows the height that is aimed at, and why that one', () => {
    const html = shown(clamp)
    expect(html).toContain('440 mm')
    expect(html).toContain('sheet’s height counts')
    expect(html).not.toContain('No height to aim at')
  })

  test('WE23 where no height can be aimed at, the reason is shown, the cautions stay, nothing is drawn', () => {
    const html = shown({
      ...clamp,
      target: null,
      raise: null,
      targetWhy: 'No height was read before lifting.',
    })
    expect(html).toContain('No height to aim at')
    expect(html).toContain('No height was read before lifting.')
    expect(html).toContain('Never under the vehicle on a jack alone.')
    expect(html).not.toContain('hub-rule')
    expect(html).not.toMatch(/\d mm/)
  })
})
