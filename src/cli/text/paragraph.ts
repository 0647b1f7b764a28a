/** Breaks a sentence into lines of at most `width` characters, each indented. */
export function paragraph(text: string, indent = '', width = 96): string {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(/\s+/).filter(Boolean)) {
    if (line && indent.length + line.length + 1 + word.length > width) {
      lines.push(indent + line)
      line = word
    } else line = line ? `${line} ${word}` : word
  }
  if (line) lines.push(indent + line)
  return lines.join('\n')
}

/** A heading with a rule under it. */
export const heading = (text: string): string => `\n${text}\n${'─'.repeat(text.length)}`
