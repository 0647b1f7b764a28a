// Holds every door to its words: each export has a doc comment with @source, each @example is run and gives
// what it says, each code of @throws is provoked by a test of its room.
// An example may use what its room's door and the doors of other rooms export, and the values that
// test/support/<room>-examples.ts exports ("corner", "spec"), when there is such a file.
//   node --import tsx scripts/doc-comments.mjs --check [room …] [--root FOLDER]
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative, resolve, sep } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import ts from 'typescript'

const mostLines = 15
const edges = ['cli', 'web']

const args = process.argv.slice(2)
const rootAt = args.indexOf('--root')
const root =
  rootAt < 0 ? resolve(dirname(fileURLToPath(import.meta.url)), '..') : resolve(args.splice(rootAt, 2)[1])
const only = args.filter((arg) => !arg.startsWith('--'))
const started = Date.now()
const problems = []
const counts = { rooms: 0, exports: 0, examples: 0, codes: 0 }

const rooms = readdirSync(join(root, 'src'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && !edges.includes(entry.name))
  .map((entry) => entry.name)
  .filter((room) => existsSync(join(root, 'src', room, 'index.ts')))
for (const room of only)
  if (!rooms.includes(room)) problems.push(`src/${room}/index.ts: there is no such door.`)

const program = ts.createProgram(
  rooms.map((room) => join(root, 'src', room, 'index.ts')),
  {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    allowImportingTsExtensions: true,
    noEmit: true,
    noLib: true,
    types: [],
  },
)
const checker = program.getTypeChecker()

/** All texts below a folder that end so. */
function texts(folder, ending) {
  if (!existsSync(folder)) return []
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name)
    if (entry.isDirectory()) return texts(path, ending)
    return ending.test(entry.name) ? [readFileSync(path, 'utf8')] : []
  })
}

/** test/published/<room>/…, test/property/<room>/…, test/<room>/… */
function testsOf(room) {
  const folders = [join(root, 'test', room)]
  if (existsSync(join(root, 'test')))
    for (const entry of readdirSync(join(root, 'test'), { withFileTypes: true }))
      if (entry.isDirectory()) folders.push(join(root, 'test', entry.name, room))
  return folders.flatMap((folder) => texts(folder, /\.test\.tsx?$/)).join('\n')
}

const quoted = (code) => new RegExp(`(['"])${code}\\1`)

async function load(path, what) {
  try {
    return await import(pathToFileURL(join(root, path)).href)
  } catch (error) {
    problems.push(`${path}:1: ${what} cannot be loaded: ${error.message}`)
    return {}
  }
}
const doors = new Map()
const values = new Map()
for (const room of rooms) {
  doors.set(room, await load(`src/${room}/index.ts`, 'the door'))
  const path = `test/support/${room}-examples.ts`
  if (existsSync(join(root, path))) values.set(room, await load(path, 'the values for examples'))
}

/** Tag by tag: what stands behind each @name, continuation lines joined. */
function tagsOf(comment) {
  const tags = []
  const inner = comment.replace(/^\/\*\*|\*\/$/g, '')
  const lines = inner.split('\n').map((line) => line.replace(/^\s*\* ?/, ''))
  for (const [i, line] of lines.entries()) {
    // A tag begins a line, or follows a sentence on it as in "Length, m. @source definition".
    const cuts = [...line.matchAll(/(?:^|\s)@(source|example|throws|param|returns|assumes)\b/g)]
    const first = cuts[0]?.index ?? line.length
    if (tags.length > 0 && first > 0 && line.slice(0, first).trim() !== '')
      tags.at(-1).text += `\n${line.slice(0, first).trim()}`
    for (const [k, cut] of cuts.entries()) {
      const text = line.slice(cut.index + cut[0].length, cuts[k + 1]?.index).trim()
      tags.push({ name: cut[1], text, line: i })
      if (cut[1] === 'example') {
        tags.at(-1).text = line.slice(cut.index + cut[0].length).trim()
        break
      }
    }
  }
  return { tags, lines: lines.map((line) => line.trim()) }
}

/** Codes a @throws names: the one (or "a and b") each part between ";" and "," begins with. */
const codesOf = (text) =>
  text
    .replace(/^\{[^}]*\}/, '')
    .split(/[;,]/)
    .flatMap((part) => {
      const lead = /^\s*(?:(?:and|or)\s+)?((?:`[a-z][a-z0-9-]*`\s*(?:and\s+|or\s+)?)+)/.exec(part)?.[1] ?? ''
      return [...lead.matchAll(/`([^`]+)`/g)].map((match) => match[1])
    })

/** "−0.25" or "1.5e-3" against a number, within half the last digit printed. */
function sameNumber(text, value) {
  const printed = text.replace('−', '-')
  const [mantissa, power = '0'] = printed.split(/e/i)
  const decimals = mantissa.split('.')[1]?.length ?? 0
  const half = 0.5 * 10 ** (Number(power) - decimals)
  return typeof value === 'number' && Math.abs(value - Number(printed)) <= half * (1 + 1e-9)
}

/** A literal written behind "//" against what came out; numbers as printed. */
function sameLiteral(node, value) {
  if (ts.isParenthesizedExpression(node)) return sameLiteral(node.expression, value)
  if (ts.isNumericLiteral(node)) return sameNumber(node.getText(), value)
  if (ts.isPrefixUnaryExpression(node) && ts.isNumericLiteral(node.operand))
    return sameNumber(node.getText().replace(/\s/g, ''), value)
  if (ts.isStringLiteralLike(node)) return node.text === value
  if (node.kind === ts.SyntaxKind.TrueKeyword) return value === true
  if (node.kind === ts.SyntaxKind.FalseKeyword) return value === false
  if (node.kind === ts.SyntaxKind.NullKeyword) return value === null
  if (ts.isIdentifier(node)) return node.text === String(value) && typeof value !== 'string'
  if (ts.isArrayLiteralExpression(node))
    return (
      (Array.isArray(value) || ArrayBuffer.isView(value)) &&
      value.length === node.elements.length &&
      node.elements.every((element, i) => sameLiteral(element, value[i]))
    )
  if (ts.isObjectLiteralExpression(node)) {
    if (typeof value !== 'object' || value === null) return false
    const wanted = node.properties.map((property) => property.name?.text)
    return (
      Object.keys(value).length === wanted.length &&
      node.properties.every(
        (property) =>
          ts.isPropertyAssignment(property) && sameLiteral(property.initializer, value[property.name.text]),
      )
    )
  }
  return false
}

function agrees(expected, value) {
  if (typeof value === 'string' && value === expected) return true
  if (typeof value === 'number') {
    // A unit may follow the digits: "90.2321 N·m".
    const digits = /^[−-]?\d+(?:\.\d+)?(?:e[-+]?\d+)?(?=$|[\s°′%])/i.exec(expected)?.[0]
    if (digits !== undefined) return sameNumber(digits, value)
  }
  const file = ts.createSourceFile('expected.ts', `(${expected})`, ts.ScriptTarget.ES2022, true)
  const statement = file.statements[0]
  if (
    file.parseDiagnostics.length > 0 ||
    file.statements.length !== 1 ||
    !ts.isExpressionStatement(statement)
  )
    return false
  return sameLiteral(statement.expression, value)
}

const shown = (value) => (typeof value === 'string' ? `"${value}"` : (JSON.stringify(value) ?? String(value)))

async function runExample(text, scope) {
  let expression = ''
  let ran = 0
  for (const line of text.split('\n')) {
    const [, code, expected] = /^(.*?)\s*(?<!:)\/\/\s*(.+)$/.exec(line) ?? [undefined, line, undefined]
    expression += `${code}\n`
    if (expected === undefined) continue
    ran++
    counts.examples++
    const refused = /^(?:throws|refuses|refused:?|Refusal)\s+`?([a-z][a-z0-9-]*)`?/.exec(expected)?.[1]
    try {
      const value = await new Function(...Object.keys(scope), `return (${expression})`)(
        ...Object.values(scope),
      )
      if (refused !== undefined) return `${expression.trim()} gives ${shown(value)}, not a refusal ${refused}`
      if (!agrees(expected, value)) return `${expression.trim()} gives ${shown(value)}, not ${expected}`
    } catch (error) {
      if (refused === undefined || error?.code !== refused)
        return `${expression.trim()} throws ${error?.code ?? error?.message ?? error}`
    }
    expression = ''
  }
  if (ran === 0 || expression.trim() !== '') return 'is not of the form "expression // expected"'
  return null
}

const seen = new Set()
for (const room of rooms) {
  if (only.length > 0 && !only.includes(room)) continue
  counts.rooms++
  const door = program.getSourceFile(join(root, 'src', room, 'index.ts'))
  const module = door && checker.getSymbolAtLocation(door)
  const symbols = module ? checker.getExportsOfModule(module) : []
  if (symbols.length === 0) problems.push(`src/${room}/index.ts:1: this door exports nothing.`)
  // Own names go before those of other rooms.
  const scope = Object.assign({}, ...[...doors.values()], doors.get(room), values.get(room))
  delete scope.default
  const tests = testsOf(room)
  const sources = texts(join(root, 'src'), /\.ts$/).join('\n')

  for (const symbol of symbols) {
    counts.exports++
    const real = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol
    const declarations = real.declarations ?? []
    if (declarations.length === 0) {
      problems.push(`src/${room}/index.ts:1: ${symbol.name} leads nowhere.`)
      continue
    }
    if (seen.has(real)) continue
    seen.add(real)
    const docs = declarations.flatMap((declaration) =>
      ts.getJSDocCommentsAndTags(declaration).filter((node) => ts.isJSDoc(node)),
    )
    const doc = docs.at(-1)
    const node = doc ?? declarations[0]
    const file = node.getSourceFile()
    const place = (line = 0) =>
      `${relative(root, file.fileName).split(sep).join('/')}:${file.getLineAndCharacterOfPosition(node.getStart()).line + 1 + line}`
    const say = (what, line) => problems.push(`${place(line)}: ${symbol.name}: ${what}`)
    if (!doc) {
      say('has no doc comment.')
      continue
    }
    const comment = file.text.slice(doc.pos, doc.end)
    const { tags, lines } = tagsOf(comment)
    const inner = lines.length > 1 ? lines.slice(1, -1) : lines
    if (inner.length > mostLines) say(`its doc comment has ${inner.length} lines, ${mostLines} are the most.`)
    if (/^@/.test(inner.find((line) => line !== '') ?? '@')) say('its doc comment does not say what it is.')
    if (!tags.some((tag) => tag.name === 'source' && tag.text !== '')) say('has no @source.')
    for (const tag of tags) {
      if (tag.name === 'example') {
        const fault = await runExample(tag.text, scope)
        if (fault) say(`@example ${fault}`, tag.line)
      }
      if (tag.name === 'throws') {
        const codes = codesOf(tag.text)
        if (!tag.text.startsWith('{Refusal}')) say('@throws names no {Refusal}.', tag.line)
        if (codes.length === 0) say('@throws names no `code`.', tag.line)
        for (const code of codes) {
          counts.codes++
          if (!quoted(code).test(tests))
            say(`@throws \`${code}\`, and no test under test/**/${room}/ provokes it.`, tag.line)
          if (!quoted(code).test(sources)) say(`@throws \`${code}\`, and no code throws it.`, tag.line)
        }
      }
    }
  }
}

if (counts.exports === 0) problems.push('No export was seen: the check itself is broken.')
for (const problem of problems) console.log(problem)
const seconds = ((Date.now() - started) / 1000).toFixed(1)
console.log(
  `${counts.exports} exports of ${counts.rooms} rooms, ${counts.examples} examples run, ${counts.codes} codes looked for, ` +
    `${problems.length} problems (${seconds} s)`,
)
process.exit(problems.length > 0 ? 1 : 0)
