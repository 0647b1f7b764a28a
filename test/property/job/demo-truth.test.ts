import { expect, test } from 'vitest'
import { cornerPoints, readCorner } from '../../../src/corner/index.ts'
import { readingOf } from '../../../src/gauge/index.ts'
import { boltBook, foldJob, readJob } from '../../../src/job/index.ts'
import { floorMapOf, instrumentsOf, readKit } from '../../../src/kit/index.ts'
import { mechanism } from '../../../src/linkage/index.ts'
import { readSpec } from '../../../src/spec/index.ts'
import { demo, demoCorner } from '../corner/demo.ts'

// What scripts/make-examples.mjs prints as the true state in the last round, degrees. The script works forward,
// from poses to what a gauge shows; the gauge room works back. Their signs for floor, strings and sweep meet here.
const truth = {
  '03': {
    'front left camber': 0.84,
    'front right camber': -0.13,
    'front left caster': 3.51,
    'front right caster': 2.76,
    'front left sai': 6.98,
    'front right sai': 7.55,
    'front left toe': -0.15,
    'front right toe': 0.7,
    'rear left camber': 0.08,
    'rear right camber': -0.06,
    'rear left toe': 0.05,
    'rear right toe': 0.02,
    thrust: 0.015,
  },
  '07': {
    'front left camber': -0.33,
    'front right camber': -0.99,
    'front left caster': 2.99,
    'front right caster': 2.05,
    'front left toe': 0.28,
    'front right toe': -0.25,
    'rear left camber': -0.52,
    'rear right camber': -0.46,
    'rear left toe': 0.13,
    'rear right toe': 0.08,
    thrust: 0.025,
    'front left toe to thrust': 0.255,
    'front right toe to thrust': -0.225,
  },
  '12': {
    'front left camber': -0.31,
    'front right camber': -2.56,
    'front left caster': 3.15,
    'front right caster': 3.16,
    'front left sai': 11.78,
    'front right sai': 11.79,
    'front left toe': -0.05,
    'front right toe': 0.43,
    'rear left camber': -1.02,
    'rear right camber': -0.95,
    'rear left toe': 0.11,
    'rear right toe': 0.13,
    thrust: -0.01,
    'front left toe to thrust': -0.04,
    'front right toe to thrust': 0.42,
  },
} as const

test.each(['03', '07', '12'] as const)('JO16 the gauges of demo job %s read its true state', (unit) => {
  const job = readJob(demo(`port-unit-${unit}/port-unit-${unit}.job.json`))
  const spec = readSpec(demo(`port-unit-${unit}/port-unit-${unit}.spec.json`))
  const kit = readKit(demo('port-kit.kit.json'))
  if (!job.ok || !spec.ok || !kit.ok) throw new Error('a demo file is not read')
  const state = foldJob(job.value.entries)
  // A kingpin is the axis that a knuckle turns about: the sweep needs no linkage.
  const model = unit === '03' ? null : mechanism(cornerPoints(demoCorner(unit)))
  const size = spec.value.size!
  const context = {
    instruments: instrumentsOf(kit.value),
    floor: floorMapOf(kit.value, state.bay!.bay)!,
    track: { front: size.track.front.value, rear: size.track.rear.value },
    wheelbase: size.wheelbase.value,
    ...(model ? { linkage: { left: model, right: model } } : {}),
  }
  const readings = state.rounds.at(-1)!.readings.flatMap(({ observation }) => readingOf(observation, context))
  const degrees = 180 / Math.PI
  for (const [name, want] of Object.entries(truth[unit])) {
    const { measured } = readings.find((reading) => reading.name === name)!
    const spread = Math.sqrt(measured.parts.reduce((sum, part) => sum + part.effect ** 2, 0)) * degrees
    // 0.005° is half the last digit that the script prints.
    expect(Math.abs(measured.value * degrees - want), name).toBeLessThan(3 * spread + 0.005)
    // A sign the wrong way round would shift a reading by more than its spread allows only if that is small.
    expect(spread, name).toBeLessThan(0.13)
  }
})

test.each(['03', '07', '12'] as const)(
  'JO16 the bolt book of demo job %s has joints in every state',
  (unit) => {
    const job = readJob(demo(`port-unit-${unit}/port-unit-${unit}.job.json`))
    const spec = readSpec(demo(`port-unit-${unit}/port-unit-${unit}.spec.json`))
    const kit = readKit(demo('port-kit.kit.json'))
    const front = readCorner(demo(`port-unit-${unit}/front.corner.json`))
    if (!job.ok || !spec.ok || !kit.ok || !front.ok) throw new Error('a demo file is not read')
    const state = foldJob(job.value.entries)
    expect(state.troubles).toEqual([])
    const lines = boltBook({
      state,
      corners: { front: front.value, rear: null },
      spec: spec.value,
      kit: kit.value,
    })
    const states = new Set(lines.map((line) => `${line.state}, ${line.done ? 'done' : 'to do'}`))
    for (const one of ['run up, to do', 'final, to do', 'checked, done', 'closed, done'])
      expect([...states]).toContain(one)
    expect(lines.some(({ record, done }) => record.pin && done)).toBe(true)
    expect(lines.some(({ record, done }) => record.checks.length > 0 && done)).toBe(true)
    // What is done was done with everything that it asks for: nothing of it says otherwise.
    expect(lines.filter(({ done }) => done).flatMap(({ toDo }) => toDo.filter((t) => t.holdsAt))).toEqual([])
  },
)
