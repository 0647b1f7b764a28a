import '../sheets/angles/choice.css'
import type { Units } from '../state/messages.ts'

const all: readonly (readonly [Units, string])[] = [
  ['metric', 'Metric'],
  ['US', 'Inch, lbf·ft'],
]

/** In which units the person at this device reads; what was typed stays as it was typed. */
export function UnitsChoice({ units, onChoose }: { units: Units; onChoose: (units: Units) => void }) {
  return (
    <fieldset className="choice">
      <legend className="overline">Units</legend>
      {all.map(([one, word]) => (
        <button key={one} type="button" aria-pressed={one === units} onClick={() => onChoose(one)}>
          {word}
        </button>
      ))}
    </fieldset>
  )
}
