import type { FindingsProblem, RankedSuspect } from '../findings/index.ts'
import type { ReadingName } from '../linkage/index.ts'
import type { Measured } from '../measure/index.ts'
import type { UnitChoice } from '../quantity/index.ts'
import { readingWords } from './reading-words.ts'
import { sheetNumber } from './sheet-number.ts'

type Said = RankedSuspect['speaksFor'][number]

/** From so many standard deviations on. @source own choice */
const strong = 3
const clear = 1.5

/** One piece of evidence as a sentence: the reading, its value, its spread, and how much it weighs. */
export function evidenceSentence({ reading, by }: Said, problem: FindingsProblem, units: UnitChoice): string {
  const weight = Math.abs(by) >= strong ? 'strongly' : Math.abs(by) >= clear ? 'clearly' : 'a little'
  const { words, value } = evidenceOf(reading, problem, units)
  return `${words}${value ? `, ${value}` : ''}: ${weight}.`
}

function evidenceOf(name: string, problem: FindingsProblem, units: UnitChoice) {
  const angle = (measured: Measured) => text(sheetNumber(measured, { kind: 'angle', unit: units.angle }))
  const length = (measured: Measured) => text(sheetNumber(measured, { kind: 'length', unit: units.length }))
  const read = problem.readings[name as ReadingName]
  if (read) {
    const { label, of } = readingWords(name as ReadingName)
    return { words: `${label}, ${of}`, value: angle(read) }
  }
  const height = problem.heights[name.replace(/ height$/, '') as keyof FindingsProblem['heights']]
  if (name.endsWith(' height') && height)
    return {
      words: `Height, ${name.replace(/ height$/, '')}, wheel above its design place`,
      value: length(height),
    }
  const play = problem.play.find(({ wheel, joint }) => name === `play, ${wheel} ${joint}`)
  if (play)
    return {
      words: `Play of the ${play.joint.replaceAll('-', ' ')}, ${play.wheel}`,
      value: length(play.swing),
    }
  if (name === 'set-back' && problem.setBack) return { words: 'Set-back', value: length(problem.setBack) }
  const check = problem.checks.find(
    (one) =>
      [one.check, one.wheel, one.joint ?? one.part].filter((part) => part !== null).join(', ') === name,
  )
  const words = name.replaceAll('-', ' ')
  return { words: words.charAt(0).toUpperCase() + words.slice(1), value: check ? check.found.join(', ') : '' }
}

const text = ({ text: value, spread }: { readonly text: string; readonly spread: string }) =>
  `${value} ${spread}`
