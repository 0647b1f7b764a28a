/** The buttons of a screen that asks: back, and on, which says what is lacking until it can be pressed. */
export function AskBar({
  isReady,
  on,
  lacks,
  onBack,
}: {
  isReady: boolean
  /** What the button that goes on says; it submits the form around it. */
  on: string
  lacks: string
  onBack: () => void
}) {
  return (
    <div className="doing-bar">
      <button type="button" className="doing-back" onClick={onBack}>
        Back
      </button>
      <button type="submit" className={isReady ? 'doing-act' : 'doing-later'} aria-disabled={!isReady}>
        {isReady ? on : lacks}
      </button>
    </div>
  )
}
