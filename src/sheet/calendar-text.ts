/** One property of a calendar component, its value not yet escaped where it is text. */
export interface CalendarLine {
  readonly name: string
  readonly value: string
  /** Text is escaped; dates and the like are not. */
  readonly isText?: boolean
}

/**
 * Content lines as a calendar file has them: text escaped, each line at most 75 octets of UTF-8, folded between
 * characters, ended by CR LF.
 *
 * @source RFC 5545, 3.1 (folding) and 3.3.11 (escaping)
 * @example calendarText([{ name: 'SUMMARY', value: 'a, b', isText: true }]) // 'SUMMARY:a\\, b\r\n'
 */
export const calendarText = (lines: readonly CalendarLine[]): string =>
  lines.map(({ name, value, isText }) => folded(`${name}:${isText ? escaped(value) : value}`)).join('')

const escaped = (text: string): string =>
  Array.from(text.replace(/\r\n|\r/g, '\n'))
    .map((sign) => (sign === '\n' ? '\\n' : /[\\;,]/.test(sign) ? `\\${sign}` : isControl(sign) ? '' : sign))
    .join('')

/** Control characters have no place in a calendar, but for the tab. */
const isControl = (sign: string): boolean => (sign < ' ' && sign !== '\t') || sign === '\u007f'

const longest = 75

function folded(line: string): string {
  const parts: string[] = []
  let part = ''
  let octets = 0
  for (const sign of line) {
    const more = octetsOf(sign)
    if (octets + more > longest) {
      parts.push(part)
      part = ' '
      octets = 1
    }
    part += sign
    octets += more
  }
  return [...parts, part].map((one) => `${one}\r\n`).join('')
}

function octetsOf(sign: string): number {
  const code = sign.codePointAt(0)!
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4
}
