import type { Side } from '../../../linkage/index.ts'
import './choice.css'

/** Which wheel the drawings below show. */
export function SideChoice({
  sides,
  side,
  onChoose,
}: {
  sides: readonly Side[]
  side: Side
  onChoose: (side: Side) => void
}) {
  return (
    <fieldset className="choice">
      <legend className="overline">Wheel drawn below</legend>
      {sides.map((one) => (
        <button key={one} type="button" aria-pressed={one === side} onClick={() => onChoose(one)}>
          {one === 'left' ? 'Left' : 'Right'}
        </button>
      ))}
    </fieldset>
  )
}
