import type { Address } from '../../state/use-address.ts'
import { useAwake } from '../../state/use-awake.ts'
import { useHand } from '../../state/use-hand.ts'
import type { OpenJob } from '../../state/use-job.ts'
import { boltAt, wheelInAddress } from './bolt-place.ts'
import { DoingScreen } from './doing-screen.tsx'
import { HandAsked } from './hand-asked.tsx'
import { nextOpen } from './next-open.ts'

/** One joint fills the screen. Who works is asked once, before the first. */
export function DoingStage({
  job,
  address,
  go,
}: {
  job: OpenJob
  address: Address
  go: (...parts: readonly string[]) => void
}) {
  useAwake()
  const hands = useHand()
  const back = () => go(address.job, address.stage)
  const book = job.bolts
  if (!book)
    return (
      <main className="doing-wait">
        <p className="page-wait">
          {job.trouble ? `${job.trouble.sentence} ${job.trouble.remedy}` : 'Opening the bolt book …'}
        </p>
        <button type="button" onClick={back}>
          Back
        </button>
      </main>
    )
  const bolt = boltAt(book.bolts, address)
  if (!bolt)
    return (
      <main className="doing-wait">
        <p className="page-wait">This job’s bolt book has no such joint.</p>
        <button type="button" onClick={back}>
          To the bolt book
        </button>
      </main>
    )
  if (hands.now === null)
    return (
      <HandAsked
        title="Who does the work?"
        why="Initials or a sign, no full name. It stands in the log beside everything that is confirmed here, and is kept on this device."
        known={hands.known}
        onHand={hands.take}
        onBack={back}
      />
    )
  const next = nextOpen(book.bolts, bolt)
  return (
    <DoingScreen
      key={`${bolt.wheel} ${bolt.joint}`}
      bolt={bolt}
      next={next}
      job={job}
      hands={hands}
      onBack={back}
      onNext={() => (next ? go(address.job, address.stage, wheelInAddress(next.wheel), next.joint) : back())}
    />
  )
}
