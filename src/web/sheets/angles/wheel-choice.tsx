import './choice.css'

/** Which wheel the drawings below show. */
export function WheelChoice({
  wheels,
  wheel,
  onChoose,
}: {
  wheels: readonly string[]
  wheel: string
  onChoose: (wheel: string) => void
}) {
  const oneAxle = new Set(wheels.map((one) => one.split(' ')[0])).size === 1
  return (
    <fieldset className="choice">
      <legend className="overline">Wheel drawn below</legend>
      {wheels.map((one) => {
        const [end = '', side = ''] = one.split(' ')
        const words = oneAxle ? side : `${end} ${side}`
        return (
          <button key={one} type="button" aria-pressed={one === wheel} onClick={() => onChoose(one)}>
            {words.slice(0, 1).toUpperCase()}
            {words.slice(1)}
          </button>
        )
      })}
    </fieldset>
  )
}
