const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

/** Text made safe for HTML and SVG, attribute values included. */
export const htmlText = (text: string): string => text.replace(/[&<>"']/g, (c) => entities[c]!)
