import type { Plain } from '../../state/messages.ts'
import type { FileDraft } from './use-file-draft.ts'

/** Faults that are told at once; the others come when these are mended. */
const most = 5

/** What is still amiss in a file, and the button that keeps it once nothing is. */
export function SaveStrip({
  draft,
  what,
  trouble,
  onSave,
}: {
  draft: FileDraft
  what: string
  trouble: Plain | null
  onSave: () => void
}) {
  const { isLooked, isChanged } = draft
  // Before anything is typed, what is missing is no fault.
  const problems = isChanged ? draft.problems : []
  const ready = isLooked && draft.problems.length === 0
  return (
    <section className="save-strip" aria-label={`Keeping the ${what}`}>
      <div role="status">
        {problems.length > 0 && (
          <ul>
            {problems.slice(0, most).map(({ field, wrong, right }) => (
              <li key={`${field} ${wrong}`}>
                <strong>{field}</strong>: {wrong}
                {/missing/.test(wrong) ? '' : ` Right would be ${right}.`}
              </li>
            ))}
            {problems.length > most && <li>and {problems.length - most} more</li>}
          </ul>
        )}
      </div>
      {trouble && (
        <p role="alert">
          {trouble.sentence} {trouble.remedy}
        </p>
      )}
      <div className="beside-do">
        <button
          type="button"
          className="primary"
          aria-disabled={!ready}
          onClick={() => {
            if (ready) onSave()
          }}
        >
          Keep the {what}
        </button>
        {draft.isChanged && (
          <button type="button" onClick={draft.leave}>
            Forget what I typed
          </button>
        )}
      </div>
    </section>
  )
}
