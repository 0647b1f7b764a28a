import { useEffect, useState } from 'react'
import { askKeeper } from '../../keep/keep-hand.ts'
import type { Workshop } from '../../keep/keep-messages.ts'
import type { PageProps } from '../../shell/page-props.ts'
import type { Plain } from '../../state/messages.ts'
import { Beside } from '../beside.tsx'
import { TroubleBox } from '../trouble-box.tsx'
import { BeginWorkshop } from './begin-workshop.tsx'
import { People } from './people.tsx'
import { RootPaper } from './root-paper.tsx'
import { takePaper } from './shown-paper.ts'
import './workshop.css'

/** The workshop that this device works for: its name, its root as people compare it, this device. */
export function WorkshopPage(page: PageProps) {
  const { address, go } = page
  const [workshop, setWorkshop] = useState<Workshop | null | undefined>(undefined)
  const [paper, setPaper] = useState<readonly string[] | null>(takePaper)
  const [trouble, setTrouble] = useState<Plain | null>(null)
  useEffect(() => {
    document.title = 'Workshop · Axlewright'
    askKeeper('workshop', null).then(
      (back) => setWorkshop(back.workshop),
      (why: Plain) => setTrouble(why),
    )
  }, [])
  const then = address.stage
  const goOn = () => {
    setPaper(null)
    if (then) go(then, address.wheel || 'findings')
  }
  return (
    <Beside here="workshop" title="Workshop" page={page}>
      <TroubleBox trouble={trouble} />
      {paper && <RootPaper paper={paper} onDone={goOn} />}
      {workshop && (
        <dl className="workshop-facts">
          <dt>Name</dt>
          <dd>{workshop.name}</dd>
          <dt>Its root</dt>
          <dd className="figure-number">{workshop.fingerprint}</dd>
          <dt>This device</dt>
          <dd className="figure-number">{workshop.device}</dd>
        </dl>
      )}
      {workshop && (
        <p className="beside-note">
          The root stands on every proof. Whoever has compared it once with yours knows that a proof comes
          from this workshop. It is no secret; what is written on the paper is.
        </p>
      )}
      {workshop && <People />}
      {workshop === null && (
        <BeginWorkshop
          onBegun={(begun, lines) => {
            setWorkshop(begun)
            setPaper(lines)
          }}
        />
      )}
    </Beside>
  )
}
