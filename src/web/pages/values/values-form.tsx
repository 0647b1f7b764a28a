import { useState } from 'react'
import { askKeeper } from '../../keep/keep-hand.ts'
import type { KeepAsks } from '../../keep/keep-messages.ts'
import type { JobRow, Plain } from '../../state/messages.ts'
import { firstHand } from '../../state/use-hand.ts'
import { FileField } from '../files/file-field.tsx'
import { SaveStrip } from '../files/save-strip.tsx'
import { useFileDraft } from '../files/use-file-draft.ts'
import { TighteningRows } from './tightening-rows.tsx'

type Files = KeepAsks['filesOf']['back']['files']

const angles = [
  ['front camber', 'Front camber', '-0.4°'],
  ['front cross camber', 'Front camber, left minus right', '0.5°'],
  ['front caster', 'Front caster', '3.2°'],
  ['front cross caster', 'Front caster, left minus right', '0.5°'],
  ['front toe', 'Front toe of each wheel', '0.06°'],
  ['front total toe', 'Front toe, total', '0.12°'],
  ['rear camber', 'Rear camber', '-1.0°'],
  ['rear toe', 'Rear toe of each wheel', '0.10°'],
  ['rear total toe', 'Rear toe, total', '0.20°'],
  ['thrust', 'Thrust angle', '0.15°'],
  ['front sai', 'Steering-axis inclination', '12.0°'],
] as const
const ends = [
  ['low', 'lowest'],
  ['preferred', 'best'],
  ['high', 'highest'],
] as const

/** A spec sheet, as the workshop types it. Nothing is filled in that the workshop did not say. */
export function ValuesForm({
  job,
  vehicle,
  files,
  onKept,
}: {
  job: string
  vehicle: string
  files: Files
  onKept: (row: JobRow) => void
}) {
  const hand = firstHand() ?? 'not said'
  const now = files.find(({ role }) => role === 'spec')?.file
  const [start] = useState<unknown>(
    () =>
      now ?? {
        format: 1,
        kind: 'spec',
        id: `${job.toLowerCase()}-spec`,
        name: vehicle,
        typedBy: hand,
        typedAt: new Date().toISOString().slice(0, 10),
        limits: {},
      },
  )
  const draft = useFileDraft('spec', job, start)
  const [trouble, setTrouble] = useState<Plain | null>(null)
  const save = async () => {
    try {
      const { saved } = await askKeeper('saveFile', { what: 'spec', file: draft.file })
      if (!saved) return
      const { row } = await askKeeper('workWith', { job, role: 'spec', id: saved.id, hand })
      draft.leave()
      onKept(row)
    } catch (why) {
      setTrouble(why as Plain)
    }
  }
  return (
    <>
      <p className="beside-note">
        Type what your own service information says, and where it stands there. What is left empty has no
        value: nothing is made up.
      </p>
      <div className="beside-field">
        <FileField
          draft={draft}
          path={['source']}
          label="Where the values stand: whose information, which edition"
        />
      </div>
      <details className="file-part" open>
        <summary>
          <h2>Limits of the angles</h2>
        </summary>
        {angles.map(([key, words, like]) => (
          <div key={key} className="file-row">
            <strong>{words}</strong>
            {ends.map(([end, said]) => (
              <FileField
                key={end}
                draft={draft}
                path={['limits', key, end]}
                label={said}
                of={words}
                like={like}
              />
            ))}
          </div>
        ))}
      </details>
      <details className="file-part">
        <summary>
          <h2>Ride height and pressures</h2>
        </summary>
        <FileField
          draft={draft}
          path={['rideHeight', 'measured']}
          label="How the height is measured"
          like="hub centre to arch edge"
        />
        {(['front', 'rear'] as const).map((axle) => (
          <div key={axle} className="file-row">
            <strong>{axle === 'front' ? 'Front height' : 'Rear height'}</strong>
            {ends.map(([end, said]) => (
              <FileField
                key={end}
                draft={draft}
                path={['rideHeight', axle, end]}
                label={said}
                of={`${axle} height`}
                like="372 mm"
              />
            ))}
          </div>
        ))}
        <div className="file-row">
          <strong>Pressures</strong>
          {(['front', 'rear'] as const).map((axle) => (
            <FileField
              key={axle}
              draft={draft}
              path={['pressures', axle]}
              label={`${axle} pressure`}
              like="240 kPa"
            />
          ))}
        </div>
      </details>
      {(['front', 'rear'] as const).map((axle) => (
        <TighteningRows
          key={axle}
          draft={draft}
          axle={axle}
          corner={files.find(({ role }) => role === axle)?.file ?? null}
        />
      ))}
      <SaveStrip draft={draft} what="values" trouble={trouble} onSave={save} />
    </>
  )
}
