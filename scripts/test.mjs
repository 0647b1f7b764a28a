// The whole test command: types, lint, walls, unused code, generated files, then every test, timed per room.
// Ends with one line: N passed, N failed, N skipped.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { join, relative, sep } from 'node:path'
import { root, setUp } from './set-up.mjs'

await setUp()
const bin = (name) => join(root, 'node_modules', '.bin', name)
const started = Date.now()
const checks = []

function check(name, command, args, judge = () => true) {
  const t = Date.now()
  const run = spawnSync(command, args, { cwd: root, encoding: 'utf8', maxBuffer: 1 << 28 })
  const out = `${run.stdout ?? ''}${run.stderr ?? ''}`
  const ok = run.status === 0 && judge(out)
  checks.push({ name, ok })
  console.log(`${ok ? 'ok  ' : 'FAIL'} ${name} (${((Date.now() - t) / 1000).toFixed(1)} s)`)
  if (!ok) console.log(out)
}

// dependency-cruiser says "no violations" when it saw nothing, so the number of modules is read as well.
const sawModules = (out) => Number(/\((\d+) modules/.exec(out)?.[1] ?? 0) > 0

check('types, pure rooms', bin('tsc'), ['-p', 'tsconfig.json'])
check('types, edges and tests', bin('tsc'), ['-p', 'tsconfig.edge.json'])
check('lint and format', bin('biome'), ['ci', '--error-on-warnings', '.'])
check('walls of the house', bin('depcruise'), ['--config', '.dependency-cruiser.cjs', 'src'], sawModules)
check('nothing unused', bin('knip'), ['--no-progress'])
for (const script of ['generated.mjs', 'doc-comments.mjs'])
  if (existsSync(join(root, 'scripts', script)))
    check(script === 'generated.mjs' ? 'generated files are current' : 'doc comments', process.execPath, [
      '--import',
      'tsx',
      join('scripts', script),
      '--check',
    ])

// House style 2: a file is one idea. No file of src/ is past the wall.
const wall = 300
const tooLong = readdirSync(join(root, 'src'), { recursive: true })
  .filter((name) => /\.tsx?$/.test(name))
  .map((name) => ({ name, lines: readFileSync(join(root, 'src', name), 'utf8').split('\n').length - 1 }))
  .filter(({ lines }) => lines > wall)
checks.push({ name: 'files within the wall', ok: tooLong.length === 0 })
console.log(`${tooLong.length === 0 ? 'ok  ' : 'FAIL'} no file of src past ${wall} lines`)
for (const { name, lines } of tooLong) console.log(`     src/${name} has ${lines}: more than one idea?`)

const out = join(root, 'test-output')
mkdirSync(out, { recursive: true })
const report = join(out, 'vitest.json')
rmSync(report, { force: true })
const only = process.argv.slice(2)
const run = spawnSync(
  bin('vitest'),
  [
    'run',
    `--reporter=${join(root, 'scripts', 'room-reporter.mjs')}`,
    '--reporter=json',
    `--outputFile.json=${report}`,
    ...only,
  ],
  { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] },
)

const counts = { passed: 0, failed: 0, skipped: 0 }
for (const c of checks) counts[c.ok ? 'passed' : 'failed']++
if (!existsSync(report)) {
  console.log('The test runner left no report.')
  counts.failed++
} else {
  const { testResults } = JSON.parse(readFileSync(report, 'utf8'))
  const rooms = new Map()
  const values = new Map()
  for (const file of testResults) {
    const parts = relative(root, file.name).split(sep)
    const room = ['published', 'property', 'alarm'].includes(parts[1])
      ? (parts[2] ?? '').replace(/\.test\.tsx?$/, '')
      : parts[1]
    const tally = rooms.get(room) ?? { seconds: 0, tests: 0 }
    tally.seconds += (file.endTime - file.startTime) / 1000
    tally.tests += file.assertionResults.length
    rooms.set(room, tally)
    if (file.status === 'failed' && file.assertionResults.length === 0) {
      counts.failed++
      console.log(`FAIL ${parts.join('/')}: ${file.message}`)
    }
    for (const a of file.assertionResults) {
      counts[a.status === 'passed' ? 'passed' : a.status === 'failed' ? 'failed' : 'skipped']++
      if (a.status === 'failed')
        console.log(
          `FAIL ${parts.join('/')} › ${a.fullName}\n     ${(a.failureMessages[0] ?? '').split('\n')[0]}`,
        )
      const basis = /\[(published|derived|from memory)\]$/.exec(a.title)?.[1]
      if (basis) values.set(basis, (values.get(basis) ?? 0) + 1)
    }
  }
  if (testResults.length === 0) counts.failed++
  console.log('\nroom            tests    seconds')
  for (const [room, t] of [...rooms].sort())
    console.log(`${room.padEnd(14)} ${String(t.tests).padStart(6)} ${t.seconds.toFixed(1).padStart(10)}`)
  console.log(`\nvalues from outside: ${[...values].map(([k, n]) => `${n} ${k}`).join(', ') || 'none yet'}`)
}
if (run.status !== 0 && counts.failed === 0) {
  console.log(`FAIL the test runner ended with ${run.status ?? run.signal} although no test failed`)
  counts.failed++
}
console.log(`whole run: ${((Date.now() - started) / 1000).toFixed(0)} s`)
console.log(`${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped`)
process.exit(counts.failed > 0 ? 1 : 0)
