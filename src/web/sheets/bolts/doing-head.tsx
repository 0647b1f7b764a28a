import type { SheetBolt } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import type { Voice } from '../../state/use-voice.ts'

/** Where one is in the book, how the vehicle stands; and what is needed rarely: aloud, undo, who works. */
export function DoingHead({
  doing: { place, secondCheck, stand },
  voice,
  text,
  hand,
  undone,
  onUndo,
  onHand,
  onMark,
}: {
  doing: SheetBolt['doing']
  voice: Voice | null
  /** What is read aloud. */
  text: string
  hand: string
  /** What undo would take back here; null when nothing. */
  undone: string | null
  onUndo: () => void
  onHand: () => void
  /** Notes how the joint is found. */
  onMark: () => void
}) {
  return (
    <header className="doing-head">
      <div className="doing-top">
        <div>
          <p className="overline">{place}</p>
          {secondCheck && <p className="overline">Second look asked</p>}
        </div>
        <div className="doing-tools">
          {undone && (
            <button type="button" onClick={onUndo}>
              Undo<span className="doing-undone">: {undone}</span>
            </button>
          )}
          <button type="button" onClick={onMark}>
            Mark<span className="unseen">: note how it is</span>
          </button>
          {voice && (
            <button
              type="button"
              aria-pressed={voice.speaking}
              onClick={() => (voice.speaking ? voice.stop() : voice.say(text))}
            >
              <span className="doing-more">Read aloud</span>
              <span className="doing-less" aria-hidden="true">
                Aloud
              </span>
            </button>
          )}
          <button type="button" onClick={onHand}>
            <span className="unseen">Who works now: </span>
            {hand}
          </button>
        </div>
      </div>
      <p className="doing-stand">{glued(stand)}</p>
    </header>
  )
}
