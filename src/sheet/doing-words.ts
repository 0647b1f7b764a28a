import type { Step } from '../fasten/index.ts'

/** What must not be missed in a step's sentence, by its act. */
const bold: Readonly<Partial<Record<Step['act'], RegExp>>> = {
  fit: /new fastener/,
  'run up': /by hand/,
  pull: /stop there|slowly/,
  'to slot': /forward/,
  pin: /New pin/,
  turn: /forward/,
  seat: /Turn the hub/,
  'back off': /Back off/,
  'end float': /on a dial/,
  undo: /Undo/,
}

/** The sentences of the step that comes now and of the one after it, with the word that must not be missed in **bold**. */
export function doingWords(steps: readonly Step[], now: number): readonly string[] {
  const step = steps[now]
  if (!step) return []
  const next = steps[now + 1]
  return [
    high(marked(step)),
    ...(step.hearing === null ? [] : [`You hear or see: ${low(step.hearing)}`]),
    ...(next ? [`Then: ${low(marked(next))}`] : []),
  ]
}

const marked = ({ act, doing }: Step): string => {
  const word = bold[act]
  return word ? doing.replace(word, '**$&**') : doing
}

const high = (text: string) =>
  text.replace(/^(\**)([a-z])/, (_, stars: string, c: string) => stars + c.toUpperCase())
const low = (text: string) =>
  text.replace(/^(\**)([A-Z])(?=[a-z])/, (_, stars: string, c: string) => stars + c.toLowerCase())
