/** Numbers from 0 to 1, the same for the same seed (xorshift). */
export function drawsOf(seed: number): () => number {
  let state = seed | 0 || 1
  return () => {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    return (state >>> 0) / 2 ** 32
  }
}

type Json = null | boolean | number | string | readonly Json[] | { readonly [name: string]: Json }

/** What may stand where something else is due. */
const strange: readonly (() => Json)[] = [
  () => null,
  () => true,
  () => 0,
  () => -0,
  () => 1e308,
  () => -1e-320,
  () => 2 ** 53 + 2,
  () => '',
  () => ' ',
  () => 'x',
  () => '0',
  () => '1e999 mm',
  () => '-0.0 mm',
  () => '12 furlongs',
  () => '١٢ mm',
  () => 'NaN',
  () => '9'.repeat(400),
  () => 'private:'.concat('a'.repeat(64)),
  () => 'é\u0301\u202e\u0000\u{1f527}',
  () => '\ud800',
  () => 'a'.repeat(20_000),
  () => '__proto__',
  () => [],
  () => ({}),
  () => [null],
  () => ({ '': 1 }),
  () => Array.from({ length: 300 }, () => 'x'),
  () => JSON.parse('{"__proto__":{"polluted":1},"constructor":2,"toString":3}') as Json,
  () => nested(200),
]

function nested(depth: number): Json {
  let value: Json = 1
  for (let i = 0; i < depth; i++) value = i % 2 === 0 ? [value] : { a: value }
  return value
}

/**
 * A JSON value with one place of it changed: something taken out, doubled, renamed, moved, exchanged, or replaced by what
 * does not belong there.
 */
export function mutated(json: unknown, draw: () => number): unknown {
  const copy = structuredClone(json)
  const places: { readonly in: Record<string, unknown> | unknown[]; readonly at: string }[] = []
  const look = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return
    for (const at of Object.keys(value)) {
      places.push({ in: value as Record<string, unknown>, at })
      look((value as Record<string, unknown>)[at])
    }
  }
  look(copy)
  const pick = <T>(list: readonly T[]): T => list[Math.floor(draw() * list.length)]!
  if (places.length === 0) return pick(strange)()
  const { in: holder, at } = pick(places)
  const list = Array.isArray(holder) ? holder : null
  const members = holder as Record<string, unknown>
  switch (Math.floor(draw() * 8)) {
    case 0:
      if (list) list.splice(Number(at), 1)
      else delete members[at]
      break
    case 1:
      if (list) list.splice(Number(at), 0, structuredClone(list[Number(at)]))
      else members[`${at}2`] = structuredClone(members[at])
      break
    case 2:
      if (!list) {
        const value = members[at]
        delete members[at]
        Object.defineProperty(members, pick(['__proto__', at.toUpperCase(), `${at} `, '', 'constructor']), {
          value,
          enumerable: true,
          configurable: true,
          writable: true,
        })
      } else list.reverse()
      break
    case 3: {
      const other = pick(places)
      const value = members[at]
      members[at] = structuredClone((other.in as Record<string, unknown>)[other.at])
      ;(other.in as Record<string, unknown>)[other.at] = value === other.in ? null : structuredClone(value)
      break
    }
    case 4:
      if (typeof members[at] === 'string') {
        const text = members[at] as string
        const from = Math.floor(draw() * (text.length + 1))
        members[at] =
          text.slice(0, from) +
          pick(['', '-', '.', ',', ' ', '′', 'e9', '\u0000', 'ß', '999999']) +
          text.slice(from + 1)
      } else members[at] = typeof members[at] === 'number' ? (members[at] as number) * -1e30 : pick(strange)()
      break
    default:
      members[at] = pick(strange)()
  }
  return copy
}

/** A text with something in it cut, doubled, or put where it does not belong. */
export function mutatedText(text: string, draw: () => number): string {
  const at = () => Math.floor(draw() * (text.length + 1))
  const [a, b] = [at(), at()].sort((x, y) => x - y) as [number, number]
  switch (Math.floor(draw() * 6)) {
    case 0:
      return text.slice(0, a)
    case 1:
      return text.slice(0, a) + text.slice(Math.min(b, a + 40))
    case 2:
      return text.slice(0, b) + text.slice(a, Math.min(b, a + 200)) + text.slice(b)
    case 3:
      return `${text.slice(0, a)}${'['.repeat(3000)}${text.slice(a)}`
    case 4:
      return `${text.slice(0, a)}${['"', '\\', '\u0000', '\ufeff', '}', ',', ':', '1e999999', '\\ud800', '//', "'"][Math.floor(draw() * 11)]}${text.slice(a)}`
    default:
      return text.slice(a) + text.slice(0, a)
  }
}
