/** Brings a block into view, its first empty field in hand. */
export function leadTo(place: string): void {
  const block = document.getElementById(place)
  const fields = [...(block?.querySelectorAll<HTMLInputElement>('input, textarea') ?? [])]
  const field = fields.find(({ value }) => value.trim() === '') ?? fields[0]
  block?.scrollIntoView({ block: 'start' })
  const at = field ?? block
  at?.focus({ preventScroll: true })
}
