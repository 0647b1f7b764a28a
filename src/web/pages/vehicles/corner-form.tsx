import { useState } from 'react'
import { FileField } from '../files/file-field.tsx'
import { valueAt } from '../files/in-file.ts'
import { SaveStrip } from '../files/save-strip.tsx'
import { useFileDraft } from '../files/use-file-draft.ts'
import '../new/new-job.css'
import { PointsDrawn } from './points-drawn.tsx'
import './vehicles.css'

const axes = ['forward of the axle', 'out from the middle', 'above the ground'] as const

/** A corner model as it is typed: what it is called, where its figures come from, its points. */
export function CornerForm({
  start,
  place,
  onSave,
  onBack,
  onExport,
}: {
  start: unknown
  place: string
  onSave: (file: unknown) => Promise<boolean>
  onBack: () => void
  onExport: (file: unknown) => void
}) {
  const [from] = useState(start)
  const draft = useFileDraft('corner', place, from)
  const points = Object.keys((valueAt(draft.file, ['points']) ?? {}) as object)
  return (
    <>
      <div className="beside-do">
        <button type="button" onClick={onBack}>
          Back to the list
        </button>
        <button type="button" onClick={() => onExport(draft.file)}>
          Export as a file
        </button>
      </div>
      <div className="beside-field">
        <FileField draft={draft} path={['id']} label="Short name, without spaces" />
        <FileField draft={draft} path={['name']} label="What it is called" />
        <FileField draft={draft} path={['source']} label="Where its figures come from, and when" />
        <FileField draft={draft} path={['wheel', 'tyre']} label="Tyre" like="195/65R15" />
        <FileField
          draft={draft}
          path={['wheel', 'loadedRadius']}
          label="Hub above the ground"
          like="303 mm"
        />
      </div>
      <PointsDrawn file={draft.file} names={points} />
      <section aria-label="Points" className="file-part">
        <h2>Points of the left side: {points.length}</h2>
        {points.map((name, i) => (
          <div key={name} className="file-row point-row">
            <strong>
              {i + 1} {name.replaceAll('-', ' ')}
            </strong>
            {axes.map((axis, k) => (
              <FileField
                key={axis}
                draft={draft}
                path={['points', name, 'at', k]}
                label={axis}
                of={name.replaceAll('-', ' ')}
                like="24 mm"
              />
            ))}
            <FileField
              draft={draft}
              path={['points', name, 'spread']}
              label="how surely, either way"
              of={name.replaceAll('-', ' ')}
              like="12 mm"
            />
          </div>
        ))}
      </section>
      <SaveStrip
        draft={draft}
        what="corner model"
        trouble={null}
        onSave={async () => {
          if (await onSave(draft.file)) draft.leave()
        }}
      />
    </>
  )
}
