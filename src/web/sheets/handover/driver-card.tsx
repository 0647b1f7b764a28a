import type { HandoverSheet } from '../../../sheet/index.ts'

/** A card for whoever drives the vehicle: what is due, and when to stop. It stands on paper only. */
export function DriverCard({ sheet }: { sheet: HandoverSheet }) {
  const due = sheet.followUps.filter(({ done }) => !done)
  return (
    <section className="driver-card" aria-hidden="true">
      <h2>For the driver of {sheet.vehicle}</h2>
      <ul>
        {due.map((one) => (
          <li key={one.noted.entry}>
            <strong>{one.when}:</strong> {one.what}
            {one.noted.texts['wheels[0]'] ? `, ${wheelsOf(one.noted.texts)}` : ''}
          </li>
        ))}
      </ul>
      <p>
        A new knock, pull or play, a wheel that gets hot or a wheel nut that turns: stop, and call before
        driving on.
      </p>
      <p>
        {sheet.workshop}, job {sheet.job}
      </p>
    </section>
  )
}

const wheelsOf = (texts: Readonly<Record<string, string>>): string =>
  Object.entries(texts)
    .filter(([path]) => path.startsWith('wheels['))
    .map(([, wheel]) => wheel)
    .join(', ')
