import { useRead } from '../../state/use-read.ts'
import { upper } from '../bolts/upper.ts'

/** Things to lay ready, each with a box; ticks hold for the sitting. */
export function PlanTicks({
  heading,
  items,
  job,
}: {
  heading: string
  items: readonly string[]
  job: string
}) {
  return (
    <>
      <h3>{heading}</h3>
      <ul className="plan-ticks">
        {items.map((item) => (
          <Tick key={item} item={item} place={`${job} to have ${heading} ${item}`} />
        ))}
      </ul>
    </>
  )
}

function Tick({ item, place }: { item: string; place: string }) {
  const [got, setGot] = useRead(place, [item])
  return (
    <li>
      <button type="button" className="bare" aria-pressed={got} onClick={() => setGot(!got)}>
        <svg width="22" height="22" viewBox="0 0 22 22" aria-hidden="true">
          <rect x="2" y="2" width="18" height="18" />
          {got && <path d="M6 11.5L9.5 15.5L16.5 6.5" />}
        </svg>
        {upper(item)}
      </button>
    </li>
  )
}
