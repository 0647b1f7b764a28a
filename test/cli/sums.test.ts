import { describe, expect, test } from 'vitest'
import { sumCommand } from '../../src/cli/commands/sum-command.ts'
import { BadInput } from '../../src/cli/files/outcome.ts'
import { topics } from '../../src/cli/sums/topics.ts'
import { Refusal } from '../../src/quantity/index.ts'

const sum = (line: string) => {
  const [question = '', ...words] = [...line.matchAll(/(?:[^\s"]|"[^"]*")+/g)].map(([word]) =>
    word.replaceAll('"', ''),
  )
  return sumCommand(question, words, {}).out
}
const numbers = (line: string) => {
  const [question = '', ...words] = [...line.matchAll(/(?:[^\s"]|"[^"]*")+/g)].map(([word]) =>
    word.replaceAll('"', ''),
  )
  return JSON.parse(sumCommand(question, words, { json: true }).out).numbers as readonly {
    name: string
    value: number
    within: number
    unit: string
  }[]
}
const said = (line: string): string => {
  try {
    sum(line)
  } catch (error) {
    expect(error instanceof BadInput || error instanceof Refusal, `${line}: ${error}`).toBe(true)
    return error instanceof Refusal
      ? `${error.sentence} ${error.remedy}`
      : (error as BadInput).lines.join('\n')
  }
  return ''
}
const example = (name: string) => topics.find((topic) => topic.name === name)!.example

describe('CM8 sum', () => {
  test('CM8 every sum says what its readings are within, or why it has no spread', () => {
    expect(topics.length).toBeGreaterThanOrEqual(11)
    for (const { example: line } of topics) {
      const out = sum(line)
      expect(out, line).toMatch(/\n {2}spread: \S/)
      expect(out, line).toMatch(/within ± \S+|none: /)
    }
  })

  test('CM8 what comes from readings is never a bare number, and says whose the default is', () => {
    for (const name of ['adapter', 'caster', 'run-out', 'toe', 'steering-wheel', 'thrust', 'tyre']) {
      const out = sum(example(name))
      expect(out.split('\n')[0], name).toMatch(/ ± \d/)
      expect(out, name).toMatch(/common practice, no source/)
      for (const one of numbers(example(name)))
        if (!['sweep factor', 'highest at', 'left of the sine'].includes(one.name))
          expect(one.within, `${name}: ${one.name}`).toBeGreaterThan(0)
    }
  })

  test('CM8 a better gauge narrows the spread in proportion, none at all leaves it exact', () => {
    for (const [name, whole, half, none] of [
      [
        'toe',
        'diameter=2 mm, reading=0.5 mm',
        'diameter=1 mm, reading=0.25 mm',
        'diameter=0 mm, reading=0 mm',
      ],
      [
        'caster',
        'reading=0.2°, steer=1°, sai=4°, floor=2 mm',
        'reading=0.1°, steer=0.5°, sai=2°, floor=1 mm',
        'reading=0°, steer=0°, sai=0°, floor=0 mm',
      ],
      ['run-out', 'reading=0.02 mm', 'reading=0.01 mm', 'reading=0 mm'],
      [
        'steering-wheel',
        'off=1°, ratio=4 %, arm=4 mm',
        'off=0.5°, ratio=2 %, arm=2 mm',
        'off=0°, ratio=0 %, arm=0 mm',
      ],
      ['thrust', 'angle=0.1°, ratio=4 %', 'angle=0.05°, ratio=2 %', 'angle=0°, ratio=0 %'],
    ] as const) {
      // four readings that lie on a sine, so that nothing widens the spread but what is said
      const line =
        name === 'run-out'
          ? 'run-out readings="0°: 2 mm, 90°: 1 mm, 180°: 0 mm, 270°: 1 mm" diameter="402 mm"'
          : example(name)
      const [a, b, c] = [whole, half, none].map((within) => numbers(`${line} within="${within}"`)[0]!)
      expect(b!.within / a!.within, name).toBeCloseTo(0.5, 2)
      expect(c!.within, name).toBe(0)
      expect(c!.value, name).toBeCloseTo(a!.value, 9)
      expect(sum(`${line} within="${whole}"`), name).toMatch(/\(as given\)/)
    }
  })

  test('CM8 toe goes from degrees to millimetres and back', () => {
    for (const toe of ['0.2°', '-0.35°', '0°12′']) {
      const [length] = numbers(`toe diameter="402 mm" angle="${toe}"`)
      const [back] = numbers(`toe diameter="402 mm" length="${length!.value} mm"`)
      expect(back!.value).toBeCloseTo(toe === '0°12′' ? 0.2 : Number.parseFloat(toe), 9)
    }
    // what was typed to a tenth of a degree deserves tenths of a millimetre, not more
    expect(sum('toe diameter="402 mm" angle="0.2°"')).toMatch(/^toe 1\.4 mm ± 0\.3 mm/)
    expect(sum('toe diameter="402 mm" angle="0.2000°"')).toMatch(/^toe 1\.403 mm ± 0\.007 mm/)
    expect(sum('toe diameter="16 in" angle="0.20°"')).toMatch(/^toe 0\.0559 in ± 0\.0014 in/)
  })

  test('CM8 a sweep need not be even, and gives SAI with the gauge along the wheel', () => {
    const even = numbers('caster side=left left="20° 1.8°" right="20° -2.2°"')[0]!
    const uneven = numbers('caster side=left left="20° 1.8°" right="12° -1.4°"')[0]!
    expect(uneven.value).toBeGreaterThan(4)
    expect(uneven.within).toBeGreaterThan(even.within)
    const both = numbers('caster side=left left="20° 1.8° -4.2°" right="20° -2.2° 4.1°"')
    expect(both.map(({ name }) => name)).toContain('SAI')
    const twice = numbers('caster side=left left="20° 1.8°, 20° 1.8°" right="20° -2.2°, 20° -2.2°"')[0]!
    expect(twice.within).toBeLessThan(even.within)
    const check = (line: string) => numbers(line).find(({ name }) => name === 'caster by the factor')!.within
    const [one, two] = [
      check('caster side=left left="20° 1.8°" right="20° -2.2°"'),
      check('caster side=left left="20° 1.8°, 20° 1.8°" right="20° -2.2°, 20° -2.2°"'),
    ]
    expect(one / two).toBeCloseTo(Math.SQRT2, 6)
    expect(sum('caster side=left left="20° 1.8°" right="20° -2.2°"')).toMatch(/cannot be decided/)
    expect(
      sum('caster side=left left="20° 1.8°" right="20° -2.2°" sai="13°" within="reading=0.02°, steer=0.2°"'),
    ).not.toMatch(/cannot be decided/)
  })

  test('CM8 a rim that may run true is told so; three places leave nothing to judge by', () => {
    expect(sum('run-out readings="0°: 0.01 mm, 120°: 0 mm, 240°: 0 mm" diameter="402 mm"')).toMatch(
      /three readings always lie on a sine[\s\S]*may run true/,
    )
    expect(
      sum('run-out readings="0°: 0.5 mm, 90°: 0 mm, 180°: 0.5 mm, 270°: 0 mm" diameter="402 mm"'),
    ).toMatch(/differ more than the gauge explains/)
  })

  test('CM8 what is left of the sine is a standard deviation with the degrees of freedom that are left', () => {
    // +d, −d around six places is a third harmonic, of which the fit takes nothing: √(6 d²/3)
    const around = [0, 60, 120, 180, 240, 300].map((at, i) => `${at}°: ${i % 2 === 0 ? 0.01 : -0.01} mm`)
    const left = numbers(`run-out readings="${around.join(', ')}" diameter="402 mm"`)
    expect(left.find(({ name }) => name === 'left of the sine')!.value).toBeCloseTo(0.01 * Math.SQRT2, 9)
  })

  test('CM8 both readings of a toe count, and an adapter of no offset may be off to either side', () => {
    // two boxes of 0.5 mm make a triangle of 1 mm, of which 95 % lie within 1 − √0.05
    const [toe] = numbers('toe diameter="432 mm" length="0 mm" within="diameter=0 mm"')
    expect(toe!.within).toBeCloseTo((((1 - Math.sqrt(0.05)) / 432) * 180) / Math.PI, 5)
    const none = 'adapter torque="100 N·m" reach="500 mm" offset="0 mm"'
    const [setting] = numbers(`${none} within="hand=0 mm, angle=0°, offset=10 mm"`)
    expect(setting!.value).toBeCloseTo(100, 9)
    expect(sum(none)).not.toMatch(/So little lever/)
    expect(sum('adapter torque="100 N·m" reach="100 mm" offset="90 mm" angle="180°"')).toMatch(
      /So little lever/,
    )
    expect(setting!.within).toBeCloseTo(0.95 * 100 * (10 / 500), 2)
  })

  test('CM8 the steering wheel: which rod is to be longer, on either side and either way of the axle', () => {
    const rods = (side: string, where: string) =>
      /(left|right) rod longer/.exec(
        sum(`steering-wheel off="3° ${side}" ratio=16 pitch="1.5 mm" arm="130 mm" rods=${where}`),
      )![1]
    // to the left while the vehicle runs straight: the right wheel goes towards toe-in, behind the axle by a longer rod
    expect([rods('left', 'behind'), rods('left', 'ahead'), rods('right', 'behind')]).toEqual([
      'right',
      'left',
      'left',
    ])
    expect(sum('thrust angle="0.25° left" ratio=16')).toMatch(/to the left/)
    // a wheel that seems to stand straight is still read by eye
    expect(sum('steering-wheel off="0° left" ratio=16')).toMatch(/by 0\.00° ± 0\.06°/)
    expect(sum('thrust angle="0° left" ratio=16')).toMatch(/stands 0\.0° ± 1\.5°/)
  })

  test('CM8 a castle nut read close to its slot is looked at again', () => {
    expect(sum('castle-nut slots=6 slotAt="-2°"')).toMatch(/2° ± 5°[\s\S]*60° to go/)
    expect(sum('castle-nut slots=6 slotAt="2°"')).toMatch(/58° ± 5°[\s\S]*60° to go/)
    expect(sum('castle-nut slots=6 slotAt="-30°"')).not.toMatch(/to go/)
  })

  test('CM8 stages are told as they were typed', () => {
    expect(sum('sequence count=5 stages="62.5 N·m, 95 lbf·ft"')).toMatch(/62\.5 N·m[\s\S]*95 lbf·ft/)
  })

  test('CM8 units: five figures of an exact factor, or the spread that is given', () => {
    expect(sum('units value="95 lbf·ft"')).toMatch(/^128\.80 N·m\n/)
    expect(sum('units value="0.001 in"')).toMatch(/^0\.0254\d* mm\n/)
    expect(sum('units value="95 lbf·ft" within="1 lbf·ft"')).toMatch(/^128\.8 N·m ± 1\.4 N·m\n/)
  })

  test('CM1 what cannot be meant is told, and how to say it', () => {
    for (const [line, words] of [
      ['castle-nut slots=six', /whole number/],
      ['sequence count="5.5" stages="60 N·m"', /whole number/],
      ['toe diameter="400 mm" length="1 mm" within="hand=2 mm"', /says nothing here.*reading=0\.5 mm/],
      ['toe diameter="400 mm" length="1 mm" within="reading"', /says nothing here/],
      ['toe diameter="400 mm" length="1 mm" within="reading=1 mm, reading=2 mm"', /said twice/],
      ['toe diameter="400 mm" length="1 mm" within="reading=-1 mm"', /not below nothing/],
      ['toe diameter="400 mm" length="1 mm" within="reading=1"', /no unit/],
      ['caster side=middle left="20° 1°" right="20° -1°"', /side=left or side=right/],
      ['caster side=left left="20° 1°" right="20° -1°" sai="95°"', /beyond 45°/],
      ['adapter torque="100 N·m" reach="1 m" offset="9 mm" accuracy="-4 %"', /not below nothing/],
      ['caster side=left left="20°" right="20° -1°"', /and the camber there/],
      ['caster side=left left="-20° 1°" right="20° -1°"', /steered to the left/],
      ['caster side=left left="20° 1°, 20° 1°" right="20° -1°"', /as many left as right/],
      ['caster side=left left="0° 1°" right="0° 1°"', /hardly turned/],
      ['run-out readings="0°: 1 mm, 90°: 2 mm" diameter="400 mm"', /Two places/],
      ['run-out readings="1 mm, 2 mm, 3 mm" diameter="400 mm"', /how far the wheel was turned/],
      ['steering-wheel off="3°" ratio=16', /to which side/],
      ['steering-wheel off="-3° left" ratio=16', /without the minus/],
      ['steering-wheel off="3° left" ratio=0', /road wheels/],
      ['steering-wheel off="3° left" ratio=16 pitch="1.5 mm"', /need both/],
      [
        'steering-wheel off="3° left" ratio=16 pitch="0 mm" arm="130 mm"',
        /pitch is “0 mm”; it must be above/,
      ],
      ['steering-wheel off="3° left" ratio=16 pitch="1 mm" arm="-130 mm"', /arm is .*above zero/],
      ['steering-wheel off="3° left" ratio=16 rods=beside', /rods=behind or rods=ahead/],
    ] as const)
      expect(said(line), line).toMatch(words)
  })
})
