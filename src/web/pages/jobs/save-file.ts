/** Hands a file to the browser's downloads. */
export function saveFile(name: string, bytes: Uint8Array, type = 'application/json'): void {
  const place = URL.createObjectURL(new Blob([Uint8Array.from(bytes)], { type }))
  const link = document.createElement('a')
  link.href = place
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(place), 10_000)
}
