import { FileField } from '../files/file-field.tsx'
import { textAt, valueAt } from '../files/in-file.ts'
import type { FileDraft } from '../files/use-file-draft.ts'

const procedures = [
  ['', 'no value typed'],
  ['torque', 'torque'],
  ['torque then angle', 'torque, then angle'],
  ['stages', 'stages'],
  ['castle slot', 'torque, then forward to the slot'],
  ['hand snug', 'by hand'],
] as const
const positions = [
  ['', 'in any position'],
  ['at ride height', 'at ride height'],
  ['wheels straight', 'with the wheels straight'],
  ['on the ground', 'on the ground'],
] as const

interface JointFile {
  readonly name?: string
}

/** What each joint of a corner is tightened to, as the workshop types it. */
export function TighteningRows({
  draft,
  axle,
  corner,
}: {
  draft: FileDraft
  axle: 'front' | 'rear'
  corner: unknown
}) {
  const joints = Object.entries((valueAt(corner, ['joints']) ?? {}) as Record<string, JointFile>)
  if (joints.length === 0) return null
  const typed = joints.filter(([joint]) => valueAt(draft.file, ['tightening', axle, joint])).length
  return (
    <details className="file-part">
      <summary>
        <h2>
          Tightening, {axle}: {typed} of {joints.length} joints
        </h2>
      </summary>
      {joints.map(([joint, { name = joint }]) => (
        <TighteningRow key={joint} draft={draft} at={['tightening', axle, joint]} name={name} />
      ))}
    </details>
  )
}

function TighteningRow({
  draft,
  at,
  name,
}: {
  draft: FileDraft
  at: readonly [string, string, string]
  name: string
}) {
  const procedure = textAt(draft.file, [...at, 'procedure'])
  const field = (member: string, label: string, like: string) => (
    <FileField draft={draft} path={[...at, member]} label={label} of={name} like={like} />
  )
  // Members that another procedure has not are left behind with it.
  const choose = (next: string) =>
    draft.set(
      at,
      next === '' ? undefined : { procedure: next, ...(next === 'stages' ? { stages: ['', ''] } : {}) },
    )
  const stages = valueAt(draft.file, [...at, 'stages'])
  return (
    <div className="file-row tightening-row">
      <strong>{name}</strong>
      <label className="file-select">
        <span>
          procedure<span className="file-unseen">, {name}</span>
        </span>
        <select value={procedure} onChange={(event) => choose(event.target.value)}>
          {procedures.map(([value, words]) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </select>
      </label>
      {(procedure === 'torque' || procedure === 'castle slot') && field('low', 'lowest', '110 N·m')}
      {(procedure === 'torque' || procedure === 'castle slot') && field('high', 'highest', '120 N·m')}
      {procedure === 'torque then angle' && field('torque', 'torque', '70 N·m')}
      {procedure === 'torque then angle' && field('angle', 'angle', '90°')}
      {Array.isArray(stages) &&
        stages.map((_, i) => (
          <FileField
            // biome-ignore lint/suspicious/noArrayIndexKey: a stage is its place
            key={i}
            draft={draft}
            path={[...at, 'stages', i]}
            label={`stage ${i + 1}`}
            of={name}
            like="60 N·m"
          />
        ))}
      {Array.isArray(stages) && (
        <button type="button" onClick={() => draft.set([...at, 'stages', stages.length], '')}>
          One stage more
        </button>
      )}
      {procedure !== '' && (
        <label className="file-select">
          <span>
            final<span className="file-unseen">, {name}</span>
          </span>
          <select
            value={textAt(draft.file, [...at, 'position'])}
            onChange={(event) => draft.set([...at, 'position'], event.target.value || undefined)}
          >
            {positions.map(([value, words]) => (
              <option key={value} value={value}>
                {words}
              </option>
            ))}
          </select>
        </label>
      )}
      {procedure !== '' && (
        <label className="file-check">
          <input
            type="checkbox"
            checked={valueAt(draft.file, [...at, 'secondCheck']) === true}
            onChange={(event) => draft.set([...at, 'secondCheck'], event.target.checked || undefined)}
          />
          <span>
            second look<span className="file-unseen">, {name}</span>
          </span>
        </label>
      )}
    </div>
  )
}
