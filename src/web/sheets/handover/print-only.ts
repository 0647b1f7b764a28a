/** Prints one part of the sheet: the look of the paper is in the sheet's own style. */
export function printOnly(part: 'card'): void {
  const { dataset } = document.documentElement
  dataset['print'] = part
  window.addEventListener(
    'afterprint',
    () => {
      delete dataset['print']
    },
    { once: true },
  )
  window.print()
}
