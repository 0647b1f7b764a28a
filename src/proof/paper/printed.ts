/** Text as it is printed: a typed hyphen before a number is a minus. */
export const printed = (text: string): string => text.replace(/(^|[\s(])-(?=[\d.,])/g, '$1−')

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

/** The same, safe in HTML and SVG. */
export const escaped = (text: string): string => printed(text).replace(/[&<>"']/g, (c) => entities[c]!)
