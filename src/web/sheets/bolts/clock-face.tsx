import { atClock } from './at-clock.ts'

const hours = [12, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]
/** Of the face, in its own units; a touch of 48 px fits between two hours on a telephone. */
const radius = 108

/** Where a mark stands as on a clock, seen the way the hand sees it: touch an hour, touch it again for half past. */
export function ClockFace({
  value,
  onChoose,
}: {
  /** "4:30"; null while none is chosen. */
  value: string | null
  onChoose: (value: string | null) => void
}) {
  const [hour, half] = value ? [Number(value.split(':')[0]), value.endsWith(':30')] : [null, false]
  const touch = (one: number) => onChoose(hour !== one ? `${one}:00` : half ? null : `${one}:30`)
  return (
    <fieldset className="clock">
      <legend>Where the mark stands, as on a clock</legend>
      <div className="clock-face">
        <svg viewBox="-150 -150 300 300" aria-hidden="true">
          <circle className="clock-ring" r="142" />
          {hour !== null && <Hand clock={((hour % 12) + (half ? 0.5 : 0)) * (Math.PI / 6)} />}
        </svg>
        {hours.map((one, i) => {
          const [x, y] = atClock((i * Math.PI) / 6, radius)
          return (
            <button
              key={one}
              type="button"
              aria-pressed={hour === one}
              style={{ left: `${50 + x / 3}%`, top: `${50 + y / 3}%` }}
              onClick={() => touch(one)}
            >
              {hour === one && half ? `${one}½` : one}
            </button>
          )
        })}
      </div>
      <p>
        {value === null
          ? 'Touch an hour; touch it again for half past, once more for none.'
          : `${value}, seen the way you see it now.`}
      </p>
    </fieldset>
  )
}

/** The mark on the face. */
export function Hand({ clock }: { clock: number }) {
  const [x1, y1] = atClock(clock, 18)
  const [x2, y2] = atClock(clock, 78)
  return <line className="clock-hand" x1={x1} y1={y1} x2={x2} y2={y2} />
}
