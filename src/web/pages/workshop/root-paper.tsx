import { forgetPaper } from './shown-paper.ts'

/** The root's secret, to be put on paper: shown once and kept nowhere. */
export function RootPaper({ paper, onDone }: { paper: readonly string[]; onDone: () => void }) {
  return (
    <section className="root-paper" aria-label="The root on paper">
      <h2>Put this on paper now</h2>
      <p>
        It is shown once and kept nowhere. Whoever has it can speak for the workshop; without it nobody can,
        once the last owner’s device is lost. Lock the paper away.
      </p>
      <pre className="figure-number">{paper.join('\n')}</pre>
      <p>The last group is a check: a slip of the pen is told when it is typed again.</p>
      <div className="beside-do screen-only">
        <button type="button" onClick={() => window.print()}>
          Print it
        </button>
        <button
          type="button"
          className="primary"
          onClick={() => {
            forgetPaper()
            onDone()
          }}
        >
          It is on paper
        </button>
      </div>
    </section>
  )
}
