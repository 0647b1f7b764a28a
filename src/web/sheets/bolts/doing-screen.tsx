import { useEffect, useRef, useState } from 'react'
import type { DoingAct, SheetBolt } from '../../../sheet/index.ts'
import type { Hands } from '../../state/use-hand.ts'
import type { OpenJob } from '../../state/use-job.ts'
import { useVoice } from '../../state/use-voice.ts'
import { wheelOf } from '../angles/wheel-of.ts'
import { actsNow, ticked } from './acts-now.ts'
import { DoingBar } from './doing-bar.tsx'
import { DoingBody } from './doing-body.tsx'
import { DoingHead } from './doing-head.tsx'
import { HandAsked } from './hand-asked.tsx'
import { isRetreat } from './is-retreat.ts'
import { MarkAsked } from './mark-asked.tsx'
import { spokenDoing } from './spoken-doing.ts'
import { upper } from './upper.ts'
import { useDoingKeys } from './use-doing-keys.ts'
import { useOneTouch } from './use-one-touch.ts'
import { ValueAsked } from './value-asked.tsx'

/** What must be known before something can be taken in. */
type Asked = { readonly what: 'work' | 'mark' } | { readonly what: 'who' | 'values'; readonly act: DoingAct }

/** One joint, one action: how the vehicle stands, what to set, what to do, and one touch for each fact. */
export function DoingScreen({
  bolt,
  next,
  job,
  hands,
  onBack,
  onNext,
}: {
  bolt: SheetBolt
  next: SheetBolt | null
  job: OpenJob
  hands: Hands
  onBack: () => void
  onNext: () => void
}) {
  const { wheel, joint, name } = bolt
  const { ready, later } = actsNow(bolt.doing, ticked(job.edits, bolt))
  const [asked, setAsked] = useState<Asked | null>(null)
  const main = useRef<HTMLElement>(null)
  const touch = useOneTouch()
  const text = spokenDoing(bolt)
  const voice = useVoice(text)
  const open = asked === null
  useEffect(() => {
    if (open) main.current?.focus({ preventScroll: true })
  }, [open])
  const place = job.edits.length - 1
  const last = job.edits[place]
  const mine = last?.kind === 'done' && last.wheel === wheel && last.joint === joint ? last : null
  const { undoable } = job
  const undone = undoable?.wheel === wheel && undoable.joint === joint ? undoable.label : null
  const refusal = (mine && job.refused.find(({ edit }) => edit === place)) ?? null

  const record = ({ label, entry }: DoingAct, hand: string, values: object = {}) => {
    setAsked(null)
    const data = { ...(entry?.data as Record<string, unknown> | undefined), ...values, hand }
    job.done({ wheel, joint, label, entry: entry && { kind: entry.kind, data } })
    main.current?.focus({ preventScroll: true })
    window.scrollTo(0, 0)
  }
  const act = (one: DoingAct) =>
    touch(() => {
      // What was not taken in is undone first: nothing is laid on it.
      if (!job.boltsCurrent || refusal) return
      if (one.asks?.length) setAsked({ what: 'values', act: one })
      else if (isAnothers(one)) setAsked({ what: 'who', act: one })
      else record(one, hands.now!)
    })
  const goOn = () =>
    touch(() => {
      if (job.boltsCurrent) onNext()
    })
  const forward = ready.filter((one) => !isRetreat(one))
  const over = forward.length === 0 && later === null
  useDoingKeys({
    // Where there is a choice, or a way back, no key takes it.
    done: () => {
      if (!open) return
      if (over) goOn()
      else if (forward.length === 1) act(forward[0]!)
    },
    back: () => (open ? onBack() : setAsked(null)),
  })

  const here = `${upper(name)}, ${wheel}`
  const close = () => setAsked(null)
  if (asked?.what === 'values')
    return (
      <ValueAsked
        act={asked.act}
        of={here}
        onValues={(values) => record(asked.act, hands.now!, values)}
        onBack={close}
      />
    )
  if (asked?.what === 'mark') return <MarkAsked bolt={bolt} job={job} onBack={close} />
  if (asked)
    return (
      <HandAsked
        title={asked.what === 'who' ? 'Who looked?' : 'Who does the work?'}
        why={
          asked.what === 'who'
            ? `${here}. Whoever looked says so with their own initials: another person than the one who tightened it.`
            : 'Initials or a sign, no full name. It stands beside everything that is confirmed from now on.'
        }
        known={hands.known}
        onHand={(hand) => {
          if (asked.what === 'who') {
            hands.meet(hand)
            record(asked.act, hand)
          } else {
            hands.take(hand)
            close()
          }
        }}
        onBack={close}
      />
    )
  return (
    <main className="doing" ref={main} tabIndex={-1} aria-label={here}>
      <DoingHead
        doing={bolt.doing}
        voice={voice}
        text={text}
        hand={hands.now!}
        undone={undone}
        onUndo={job.undo}
        onHand={() => setAsked({ what: 'work' })}
        onMark={() => setAsked({ what: 'mark' })}
      />
      <DoingBody
        bolt={bolt}
        corner={job.sheet?.corners.find((drawn) => wheelOf(drawn) === wheel) ?? null}
        refusal={refusal}
        job={job.row?.kept ? job.row.id : null}
      />
      <DoingBar
        ready={ready}
        later={later}
        busy={!job.boltsCurrent || refusal !== null}
        goOn={over ? (next ? `Next: ${next.name}, ${next.wheel}` : 'To the bolt book') : null}
        onAct={act}
        onBack={onBack}
        onGoOn={goOn}
      />
    </main>
  )
}

/** A second look by another person: whose, is asked. */
const isAnothers = ({ entry }: DoingAct): boolean =>
  entry?.kind === 'checked' && (entry.data as { by?: unknown }).by === 'another person'
