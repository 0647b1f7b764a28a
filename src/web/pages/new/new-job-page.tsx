import { useEffect, useId, useState } from 'react'
import { startingLayouts } from '../../../corner/index.ts'
import { startingKit } from '../../../kit/index.ts'
import { askKeeper } from '../../keep/keep-hand.ts'
import type { PageProps } from '../../shell/page-props.ts'
import type { Plain } from '../../state/messages.ts'
import { useHand } from '../../state/use-hand.ts'
import { useWorkshopFiles } from '../../state/use-workshop-files.ts'
import { Beside } from '../beside.tsx'
import { TroubleBox } from '../trouble-box.tsx'
import { deviceName } from '../workshop/device-name.ts'
import { holdPaper } from '../workshop/shown-paper.ts'
import { complaints } from './complaints.ts'
import { LayoutChoice } from './layout-choice.tsx'
import { ownModels } from './own-models.ts'
import './new-job.css'

/** A new job from a complaint and a layout; everything else can come later. */
export function NewJobPage(page: PageProps) {
  const { address, go, kept } = page
  const old = kept.rows?.find(({ id }) => id === address.stage)?.line ?? null
  const id = useId()
  const hands = useHand()
  const [vehicle, setVehicle] = useState<string | null>(null)
  const [said, setSaid] = useState<readonly string[]>([])
  const [words, setWords] = useState('')
  const [front, setFront] = useState<string | null>(null)
  const [rear, setRear] = useState<string | null>(null)
  const [hand, setHand] = useState<string | null>(null)
  const own = useWorkshopFiles()
  const [called, setCalled] = useState('')
  const [busy, setBusy] = useState(false)
  const [trouble, setTrouble] = useState<Plain | null>(null)
  useEffect(() => {
    document.title = 'New job · Axlewright'
  }, [])
  const unit = (vehicle ?? old?.vehicle ?? '').trim()
  const complaint = [...said, words.trim()].filter(Boolean).join(', ')
  const sign = (hand ?? hands.now ?? '').trim()
  const lacks = [
    ...(complaint ? [] : ['a complaint']),
    ...(unit ? [] : ['which vehicle it is']),
    ...(front ? [] : ['the layout of the front axle']),
    ...(own.workshop === null && !called.trim() ? ['what the workshop is called'] : []),
    ...(sign ? [] : ['your initials']),
  ]
  const open = async () => {
    if (busy || lacks.length > 0 || !front) return
    setBusy(true)
    hands.take(sign)
    try {
      if (own.workshop === null) {
        const { paper } = await askKeeper('begin', { name: called.trim(), device: deviceName() })
        holdPaper(paper)
      }
      const { row } = await askKeeper('open', {
        vehicle: unit,
        complaint,
        corners: { front, rear },
        spec: null,
        kit: own.files.find(({ what }) => what === 'kit')?.id ?? startingKit.id,
        follows: old ? { job: old.job, mileage: '' } : null,
        hand: sign,
      })
      kept.update(row)
      // The root is put on paper before it can be forgotten.
      if (own.workshop === null) go('workshop', row.id)
      else go(row.id, 'findings')
    } catch (why) {
      setTrouble(why as Plain)
      setBusy(false)
    }
  }
  const toggle = (one: string) =>
    setSaid(said.includes(one) ? said.filter((other) => other !== one) : [...said, one])
  return (
    <Beside
      here="new"
      title={old ? `It came back: ${old.vehicle}` : 'New job'}
      page={page}
      next={
        <section className="next" aria-label="What comes next">
          <div className="next-words">
            <p>
              {lacks.length === 0
                ? 'That is enough for a first answer: what to check first, and how the vehicle is held for it.'
                : `Still missing: ${lacks.join(', ')}.`}
            </p>
          </div>
          <button type="button" aria-disabled={lacks.length > 0 || busy} onClick={open}>
            Open the job
          </button>
        </section>
      }
    >
      <TroubleBox trouble={trouble} />
      <fieldset className="beside-field new-complaint">
        <legend>What is it that brings the vehicle here?</legend>
        <div className="beside-do">
          {complaints.map((one) => (
            <button key={one} type="button" aria-pressed={said.includes(one)} onClick={() => toggle(one)}>
              {one}
            </button>
          ))}
        </div>
        <label htmlFor={`${id}-own`}>In the owner’s own words</label>
        <input id={`${id}-own`} value={words} onChange={(event) => setWords(event.target.value)} />
      </fieldset>
      <div className="beside-field">
        <label htmlFor={`${id}-vehicle`}>Vehicle</label>
        <input
          id={`${id}-vehicle`}
          value={vehicle ?? old?.vehicle ?? ''}
          placeholder="as the workshop calls it: unit 07, crew bus"
          autoComplete="off"
          onChange={(event) => setVehicle(event.target.value)}
        />
      </div>
      <LayoutChoice
        title="Front axle"
        layouts={[
          ...ownModels(own.files, 'front'),
          ...startingLayouts.filter(({ axle }) => axle === 'front'),
        ]}
        chosen={front}
        onChoose={setFront}
      />
      <LayoutChoice
        title="Rear axle"
        none="Not in this job"
        layouts={[...ownModels(own.files, 'rear'), ...startingLayouts.filter(({ axle }) => axle === 'rear')]}
        chosen={rear}
        onChoose={setRear}
      />
      <p className="beside-note">
        A layout is a typical corner with invented points: it says what comes apart and what to look at. What
        its figures are worth is said wherever they count, and grows with what is measured.
      </p>
      {own.workshop === null && (
        <div className="beside-field">
          <label htmlFor={`${id}-workshop`}>What is the workshop called?</label>
          <input
            id={`${id}-workshop`}
            value={called}
            autoComplete="off"
            onChange={(event) => setCalled(event.target.value)}
          />
          <small>Asked once on this device. The name stands on every proof.</small>
        </div>
      )}
      <div className="beside-field new-hand">
        <label htmlFor={`${id}-hand`}>Your initials</label>
        <input
          id={`${id}-hand`}
          value={hand ?? hands.now ?? ''}
          maxLength={12}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          onChange={(event) => setHand(event.target.value)}
        />
        <small>Initials or a sign, no full name. They stand beside everything that you note.</small>
      </div>
    </Beside>
  )
}
