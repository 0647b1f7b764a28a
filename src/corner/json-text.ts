import { bad, good, type Problem, type Reading } from './reading.ts'

/** Nesting past which a file is not one of ours but an attack or an accident. */
const DEEPEST = 100

/**
 * JSON text to a plain value, as RFC 8259 has it, but a member written twice is an error instead of the
 * last one winning, and every fault is told with its line and column. A byte order mark at the start is
 * passed over. Reading stops at the first fault of grammar; members written twice are all listed.
 *
 * @param text the whole file
 * @returns the value, or the problems; `field` is "line 3, column 14"
 * @source RFC 8259, 2–8
 * @example readJsonText('{"a": 1, "a": 2}').ok // false
 */
export function readJsonText(text: string): Reading<unknown> {
  const reader = new JsonReader(text)
  try {
    const value = reader.file()
    return reader.twice.length > 0 ? bad(reader.twice) : good(value)
  } catch (fault) {
    if (fault instanceof Fault) return bad([...reader.twice, fault.problem])
    throw fault
  }
}

class Fault extends Error {
  readonly problem: Problem
  constructor(problem: Problem) {
    super(problem.wrong)
    this.problem = problem
  }
}

/** The cursor over the text; it lives for one call only. */
class JsonReader {
  readonly twice: Problem[] = []
  private readonly text: string
  private at: number
  private seen: { readonly at: number; readonly line: number; readonly column: number }
  constructor(text: string) {
    this.text = text
    this.at = text.charCodeAt(0) === 0xfeff ? 1 : 0
    this.seen = { at: this.at, line: 1, column: 1 }
  }

  file(): unknown {
    this.blank()
    if (this.at === this.text.length)
      this.fail('The file is empty.', 'a JSON object that starts with { and ends with }')
    const value = this.value(0)
    this.blank()
    if (this.at < this.text.length)
      this.fail(
        `${this.shown()} stands after the end.`,
        'nothing after the closing bracket; perhaps a bracket too many before it',
      )
    return value
  }

  /** Line and column of a place. Places mostly come in order, so it goes on from the last one. */
  private where(at = this.at): string {
    if (at < this.seen.at) this.seen = { at: this.text.charCodeAt(0) === 0xfeff ? 1 : 0, line: 1, column: 1 }
    let { at: i, line, column } = this.seen
    while (i < at) {
      const c = this.text.codePointAt(i)!
      if (c === 10 || (c === 13 && this.text.charCodeAt(i + 1) !== 10)) {
        line++
        column = 1
      } else if (c !== 13) column++
      i += c > 0xffff ? 2 : 1
    }
    this.seen = { at: i, line, column }
    return `line ${line}, column ${column}`
  }

  private shown(): string {
    const code = this.text.codePointAt(this.at)
    if (code === undefined) return 'The end of the file'
    return code < 32 ? `Control character ${code}` : `“${String.fromCodePoint(code)}”`
  }

  private fail(wrong: string, right: string, at = this.at): never {
    throw new Fault({ field: this.where(at), wrong, right })
  }

  private blank(): void {
    while (/[ \t\r\n]/.test(this.text[this.at] ?? '')) this.at++
  }

  private value(depth: number): unknown {
    const c = this.text[this.at]
    if (depth > DEEPEST)
      this.fail(`Brackets stand more than ${DEEPEST} deep.`, 'a file of one of the four formats')
    if (c === '{') return this.object(depth)
    if (c === '[') return this.list(depth)
    if (c === '"') return this.string()
    const number = /-?(0|[1-9]\d*)(\.\d+)?([eE][+-]?\d+)?/y
    number.lastIndex = this.at
    const digits = number.exec(this.text)?.[0]
    if (digits !== undefined) {
      this.at += digits.length
      if (/[\w.]/.test(this.text[this.at] ?? ''))
        this.fail(
          `${this.shown()} follows the number ${digits}.`,
          'a plain number, or text in quotes when it has a unit, such as "352 mm"',
        )
      return Number(digits)
    }
    for (const [word, meaning] of [
      ['true', true],
      ['false', false],
      ['null', null],
    ] as const)
      if (this.text.startsWith(word, this.at)) {
        this.at += word.length
        return meaning
      }
    return this.fail(
      `${this.shown()} stands where a value belongs.`,
      c === "'"
        ? 'double quotes around text'
        : 'text in double quotes, a number, a list [ ] or an object { }',
    )
  }

  private object(depth: number): Record<string, unknown> {
    const found: Record<string, unknown> = {}
    const open = this.at++
    this.blank()
    if (this.text[this.at] === '}') {
      this.at++
      return found
    }
    for (;;) {
      const start = this.at
      if (this.text[this.at] !== '"')
        this.fail(
          `${this.shown()} stands where a member's name belongs.`,
          'a name in double quotes, such as "points"; no comma before a closing bracket',
        )
      const name = this.string()
      if (Object.hasOwn(found, name))
        this.twice.push({
          field: this.where(start),
          wrong: `"${name}" is written twice in the same object.`,
          right: 'one of the two; the other is removed or renamed',
        })
      this.blank()
      if (this.text[this.at] !== ':') this.fail(`${this.shown()} follows the name "${name}".`, 'a colon')
      this.at++
      this.blank()
      const value = this.value(depth + 1)
      // Not by assignment: that would let a member named __proto__ change the object itself.
      Object.defineProperty(found, name, { value, enumerable: true, configurable: true, writable: true })
      if (this.next('}', open, 'object')) return found
    }
  }

  private list(depth: number): unknown[] {
    const found: unknown[] = []
    const open = this.at++
    this.blank()
    if (this.text[this.at] === ']') {
      this.at++
      return found
    }
    for (;;) {
      found.push(this.value(depth + 1))
      if (this.next(']', open, 'list')) return found
    }
  }

  /** Past a comma (false) or past the closing bracket (true). */
  private next(closing: string, open: number, what: string): boolean {
    this.blank()
    const c = this.text[this.at]
    if (c === closing) {
      this.at++
      return true
    }
    if (c === undefined) this.fail(`The ${what} opened at ${this.where(open)} is not closed.`, `a ${closing}`)
    if (c !== ',') this.fail(`${this.shown()} stands where the ${what} goes on.`, `a comma or a ${closing}`)
    this.at++
    this.blank()
    return false
  }

  private string(): string {
    const open = this.at
    // biome-ignore lint/suspicious/noControlCharactersInRegex: RFC 8259 forbids exactly these inside a text
    const ends = /"(?:[^"\\\u0000-\u001f]+|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*/y
    ends.lastIndex = open
    const body = ends.exec(this.text)?.[0] ?? '"'
    this.at = open + body.length
    const c = this.text[this.at]
    if (c === '"') {
      this.at++
      return JSON.parse(`${body}"`) as string
    }
    if (c === '\\')
      this.fail('A backslash in a text is followed by nothing it may stand before.', '\\\\ for a backslash')
    if (c === undefined || c === '\n' || c === '\r')
      this.fail(
        `The text opened at ${this.where(open)} has no closing quote on its line.`,
        'a double quote at its end',
      )
    return this.fail(
      `${this.shown()} stands inside a text.`,
      'control characters written as \\t, \\n or \\u00…',
    )
  }
}
