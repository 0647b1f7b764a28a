import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, truncateSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'

const root = fileURLToPath(new URL('../../', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'axlewright-cli-'))
const job = 'examples/port-unit-07/port-unit-07.job.json'

/** The real command in a process of its own. */
function axlewright(...words: string[]) {
  const run = spawnSync(process.execPath, ['scripts/axlewright.mjs', ...words], {
    cwd: root,
    encoding: 'utf8',
  })
  return { code: run.status, out: run.stdout, err: run.stderr }
}

/** What the demo bus's job names, but for the kit. */
const busModels = ['front.corner.json', 'rear.corner.json', 'port-unit-07.spec.json'].map(
  (file) => `examples/port-unit-07/${file}`,
)

describe('axlewright', () => {
  test('CM1 CM2 the demo sheet: text on standard output, 1 because limits fail', () => {
    const { code, out, err } = axlewright('sheet', job)
    expect(err).toBe('')
    expect(code).toBe(1)
    expect(out).toMatch(/Camber, right front +−\d\.\d+° ± /)
    expect(out).toMatch(/Never get under a vehicle that a jack alone carries/)
  })

  test('--plain stays within Latin-1 and loses nothing', () => {
    const { out } = axlewright('sheet', job, '--plain')
    expect([...out].filter((c) => c.codePointAt(0)! > 0xff)).toEqual([])
    // a question mark is the shape of one verdict, and nothing else became one
    expect(out.replace(/^\? /gm, '')).not.toContain('?')
    expect(out).toMatch(/Camber, right front +-\d\.\d+° ± /)
  })

  test('CM2 --json is JSON and nothing else', () => {
    const sheet = JSON.parse(axlewright('sheet', job, '--json').out)
    expect(sheet.readings.length).toBeGreaterThan(10)
    expect(JSON.parse(axlewright('moves', job, '--json').out).moves.length).toBeGreaterThan(0)
  })

  test('CM5 the page for paper fetches nothing', () => {
    const file = join(folder, 'sheet.html')
    const { out } = axlewright('sheet', job, '--html', file)
    const html = readFileSync(file, 'utf8')
    expect(out).toContain(file)
    expect(html).toMatch(/^<!doctype html>/)
    expect(html).not.toMatch(/https?:|src=|@import|url\((?!#hatch)/)
    expect(html).toContain('Never get under a vehicle')
  })

  test('moves and clamp say what the hand does', () => {
    expect(axlewright('moves', job).out).toMatch(/eccentric: \d+° (anti)?clockwise/)
    expect(axlewright('clamp', job).out).toMatch(/raise the hub from where it hangs by \d+ mm ± \d+ mm/)
  })

  test('by npm too, files are those of the folder where the person stands', () => {
    const run = spawnSync('npm', ['run', '--silent', 'axlewright', '--', 'check', 'front.corner.json'], {
      cwd: join(root, 'examples', 'port-unit-07'),
      encoding: 'utf8',
      shell: process.platform === 'win32',
    })
    expect([run.status, run.stdout]).toEqual([0, 'front.corner.json: fine (corner model, format 1)\n'])
  })

  test('moves that were made already are told as made; what was not read is not fine', () => {
    const file = JSON.parse(readFileSync(join(root, job), 'utf8'))
    const put = (name: string, entries: readonly object[]) => {
      const path = join(mkdtempSync(join(folder, 'job-')), name)
      writeFileSync(path, JSON.stringify({ ...file, entries }))
      return path
    }
    const models = busModels
    const beside = ['--with', ...models, 'examples/port-kit.kit.json']
    const turned = { kind: 'moved', data: { adjuster: 'tie-rod', wheel: 'front left', by: '-1/3 turn' } }
    const made = axlewright('moves', put('made.job.json', [...file.entries, turned]), ...beside)
    expect(made.out).toMatch(/Moves, noted as made[\s\S]*Do not turn them a second time/)
    expect(made.code).toBe(1)
    const third = { kind: 'round', data: { number: 3, purpose: 'proving', settled: true } }
    const one = file.entries.findLast(
      (e: { data: { method?: string; wheel?: string } }) =>
        e.data.method === 'inclinometer' && e.data.wheel === 'front left',
    )
    const part = axlewright('sheet', put('part.job.json', [...file.entries, third, one]), ...beside)
    expect(part.out).toMatch(/Not read in this round/)
    expect(part.code).toBe(1)
  })

  test('read: a method, a word or a file that cannot be meant is told as such', () => {
    const kit = ['--kit', 'examples/port-kit.kit.json']
    const told = (...words: string[]) => {
      const { code, out, err } = axlewright('read', ...words)
      expect([code, out]).toEqual([2, ''])
      return err
    }
    expect(told('protractor')).toMatch(/“protractor” is no method. Known are inclinometer/)
    expect(told('toString')).toMatch(/is no method/)
    expect(told('strings', ...kit)).toMatch(/Write them into a job file/)
    expect(told('height', ...kit, 'rule=rule', 'rule=tape')).toMatch(/“rule” is said twice/)
    expect(
      told('inclinometer', ...kit, 'wheel=front left', 'gauge=inclinometer', 'readings=0°: 400°'),
    ).toMatch(/no wheel leans beyond 45°/)
    const sweep = ['side=left', 'gauge=inclinometer', 'steerGauge=turn-plates', 'left=20° 1.3°']
    expect(told('sweep', ...kit, ...sweep, 'right=20° -0.7°')).toMatch(/Both ends are steered by “20°”/)
    const alone = axlewright(
      'read',
      'inclinometer',
      ...kit,
      'wheel=front left',
      'gauge=inclinometer',
      'readings=-0.3°',
    )
    expect(alone.out).toMatch(/front left camber: −0\.3/)
    const huge = join(mkdtempSync(join(folder, 'huge-')), 'huge.kit.json')
    writeFileSync(huge, '')
    truncateSync(huge, 2 ** 31)
    expect(told('height', '--kit', huge)).toMatch(/huge\.kit\.json: This file has 2048 MB/)
  })

  test('CM7 bolts: what is open first, why, and what to do', () => {
    const { code, out } = axlewright('bolts', job)
    expect(code).toBe(1)
    expect(out).toMatch(/Open joints: [1-9]/)
    // the same job before its ball joints were tightened
    const file = JSON.parse(readFileSync(join(root, job), 'utf8'))
    const untouched = ['tightened', 'pinned', 'checked']
    const path = join(mkdtempSync(join(folder, 'bolts-')), 'before.job.json')
    writeFileSync(
      path,
      JSON.stringify({
        ...file,
        entries: file.entries.filter(
          ({ kind, data }: { kind: string; data: { joint?: string } }) =>
            !(untouched.includes(kind) && data.joint === 'lower-ball-joint'),
        ),
      }),
    )
    const models = busModels
    const before = axlewright('bolts', path, '--with', ...models, 'examples/port-kit.kit.json').out
    expect(before).toMatch(/lower ball joint: open\n.*forward to the next slot, never past 130 N·m/)
    expect(before).toMatch(/undone \(open\), and no closing is recorded/)
    expect(before).toMatch(/Floor, on the long clicking wrench 105 N·m; Ceiling/)
    expect(before).toMatch(/! Never back to meet the hole/)
    const book = JSON.parse(axlewright('bolts', job, '--json').out)
    expect(book.bolts[0].done).toBe(false)
    expect(book.bolts.at(-1).state).toBe('closed')
  })

  test('CM1 check: a job whose models are nowhere is fine by itself, and not proven', () => {
    const alone = mkdtempSync(join(folder, 'alone-'))
    const path = join(alone, 'one.job.json')
    writeFileSync(path, readFileSync(join(root, job)))
    const { code, out } = axlewright('check', path)
    expect(code).toBe(1)
    expect(out).toContain('one.job.json: fine by itself (job, format 1)')
    expect(out).toMatch(/it names the kit “port-kit”, and no file given, beside it or one folder up/)
    expect(out).toMatch(/it names the spec sheet “port-unit-07-spec”/)
    // Each of them given, or beside it: fine, and no more is said.
    const models = busModels
    expect(axlewright('check', path, ...models, 'examples/port-kit.kit.json').code).toBe(0)
    expect(axlewright('check', job)).toMatchObject({ code: 0, out: `${job}: fine (job, format 1)\n` })
    // A file beside it that cannot be read is not the one that is looked for.
    writeFileSync(join(alone, 'broken.kit.json'), '{')
    expect(axlewright('check', path).code).toBe(1)
  })

  test('CM8 sum: each example of its help runs and gives formula and source', () => {
    const help = axlewright('sum', '--help').out
    const examples = [...help.matchAll(/axlewright (sum .*=.*)/g)].map(([, line]) => line!)
    expect(examples.length).toBeGreaterThanOrEqual(7)
    for (const line of examples) {
      const words = [...line.matchAll(/(?:[^\s"]|"[^"]*")+/g)].map(([word]) => word.replaceAll('"', ''))
      const { code, out, err } = axlewright(...words)
      expect(code, `${line}: ${err}`).toBe(0)
      expect(out, line).toMatch(/source: /)
    }
    // US Army TM 1-1500-204-23-9, fig. 8-16 (a): 300 lbf·in through 4 in on a 10 in wrench is 214 lbf·in = 24.2 N·m
    const lever = ['torque=300 lbf·in', 'reach=10 in', 'offset=4 in']
    expect(axlewright('sum', 'adapter', ...lever).out).toMatch(/set the wrench to 24\.2 N·m/)
    for (const words of [
      ['units', 'value=12'],
      ['adapter', 'torque=3 N·m'],
      ['toe', 'diameter=400 mm'],
      ['x'],
    ]) {
      const { code, err } = axlewright('sum', ...words)
      expect(code).toBe(2)
      expect(err).toMatch(/has no unit|Still missing|once|Known are/)
    }
  })

  test('read: one gauge with where its spread comes from', () => {
    const { code, out } = axlewright(
      ...['read', 'inclinometer', '--kit', 'examples/port-kit.kit.json', 'wheel=front left'],
      ...['gauge=inclinometer', 'readings=0°: -0.30°, 180°: -0.15°'],
    )
    expect(code).toBe(0)
    expect(out).toMatch(/front left camber: −0\.2\d+° ± 0\.\d+°/)
    expect(out).toMatch(/what the spread is made of/)
  })

  test('CM3 every fault of a file in one go, exit 2', () => {
    const file = join(folder, 'bad.spec.json')
    const spec = JSON.parse(readFileSync(join(root, 'examples/port-unit-07/port-unit-07.spec.json'), 'utf8'))
    spec.limits['front camber'].low = '-1.0'
    spec.limits['front castor'] = spec.limits['front caster']
    writeFileSync(file, JSON.stringify(spec))
    const { code, out } = axlewright('check', file, 'examples/port-kit.kit.json')
    expect(code).toBe(2)
    expect(out).toMatch(/limits\.front camber\.low/)
    expect(out).toMatch(/front castor/)
    expect(out).toMatch(/port-kit\.kit\.json: fine/)
  })

  test('CM1 CM2 what cannot be used ends with 2, in plain sentences on standard error', () => {
    for (const words of [
      ['sheet', 'no-such-file.json'],
      ['read', 'tap', '--kit', 'examples/port-kit.kit.json'],
      ['read', 'height'],
      ['moves'],
      ['sheeet', job],
    ]) {
      const { code, out, err } = axlewright(...words)
      expect(code, words.join(' ')).toBe(2)
      expect(out).toBe('')
      expect(err.length).toBeGreaterThan(20)
      expect(err).not.toMatch(/ at .*\.(ts|mjs):\d/)
    }
  })

  test('CM4 a model that is nowhere is named, with what to do', () => {
    const file = join(folder, 'lonely.job.json')
    writeFileSync(file, readFileSync(join(root, job)))
    const { code, err } = axlewright('sheet', file)
    expect(code).toBe(2)
    expect(err).toMatch(/port-unit-07-front/)
    const given = axlewright('sheet', file, '--with', ...busModels, 'examples/port-kit.kit.json')
    expect(given.code).toBe(1)
  })

  test('CM6 poses answers good and bad rows', () => {
    const file = join(folder, 'cases.json')
    const geometry = {
      type: 'five_link',
      links: [],
      wheel_center: [0, 0.75, 0.3],
      camber_deg: 0,
      toe_deg: 0,
      tyre_radius: 0.3,
    }
    writeFileSync(file, JSON.stringify({ bad: [{ id: 'none', geometry, travel: 0, rack: 0, error: null }] }))
    const { code, out } = axlewright('poses', file)
    expect(code).toBe(0)
    expect(JSON.parse(out).bad[0].error).toBe('bad-input')
    expect(JSON.parse(out).bad[0].sentence.length).toBeGreaterThan(10)
  })

  test('help that says what it is for, and the cautions', () => {
    const { code, out } = axlewright('--help')
    expect(code).toBe(0)
    expect(out).toMatch(/how far to turn each adjuster/)
    expect(out).toMatch(/jack alone/)
  })
})
