const plainer: Readonly<Record<string, string>> = {
  '−': '-',
  '–': '-',
  '─': '-',
  '…': '...',
  '“': '"',
  '”': '"',
  '’': "'",
  '≤': '<=',
  '≥': '>=',
  '□': '[ ]',
  '■': '[x]',
  '½': '1/2',
}

/** Text for terminals that show boxes: what lies outside Latin-1 is put in ASCII. ° ± · stay. */
export const plainText = (text: string): string => text.replace(/[^\t\n\x20-\xff]/g, (c) => plainer[c] ?? '?')
