import { useState } from 'react'
import type { FindingsCheck } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import { useMatch } from '../../drawing/use-match.ts'
import { usePrinting } from '../../drawing/use-printing.ts'
import { StageFrame } from '../../shell/stage-frame.tsx'
import type { StageProps } from '../../shell/stage-props.ts'
import { useFindings } from '../../state/use-findings.ts'
import { firstHand } from '../../state/use-hand.ts'
import { Cautions } from '../angles/cautions.tsx'
import { Troubles } from '../angles/troubles.tsx'
import { FindingDrawn } from './finding-drawn.tsx'
import { FindingGroup } from './finding-group.tsx'
import { FindingsChecks } from './findings-checks.tsx'
import { FindingsLists } from './findings-lists.tsx'
import { FindingsNext } from './findings-next.tsx'

/** The findings of a job: what explains the readings, how surely, what to check next, what to order. */
export function FindingsStage({ job, id, units, head, foot }: StageProps) {
  const findings = useFindings(job, id, units)
  const { sheet } = findings
  const [open, setOpen] = useState<string | null>(null)
  const wide = useMatch('(min-width: 1180px)')
  const printing = usePrinting()
  const trouble = job.trouble ?? findings.trouble
  const all = sheet?.groups.flatMap(({ suspects }) => suspects) ?? []
  const shown = all.find((one) => one.id === open) ?? all.find(({ ghost }) => ghost !== null) ?? null
  const found = ({ what, where, notes }: FindingsCheck, one: string) => {
    if (!notes) return
    const hand = firstHand()
    job.note(`${what}, ${where}: ${one}`, [
      { kind: 'hand check', data: { ...notes.data, found: [one], ...(hand ? { hand } : {}) } },
    ])
  }
  return (
    <>
      <StageFrame
        head={head}
        foot={foot}
        trouble={trouble}
        wait={sheet ? null : 'Weighing what explains the readings …'}
      >
        {sheet && (
          <div className="findings" aria-busy={findings.working} data-took={Math.round(findings.took)}>
            <Troubles troubles={sheet.troubles} />
            <section className="findings-answer" aria-label="The answer" aria-live="polite">
              <div className="findings-rounds">
                {sheet.rounds.length === 0 && <p>No angles were read yet: hands and eyes only.</p>}
                {sheet.rounds.length === 1 && <p>{sheet.rounds[0]!.words}</p>}
                {sheet.rounds.length > 1 && (
                  <fieldset className="choice">
                    <legend>Judged by</legend>
                    {sheet.rounds.map(({ number, words }) => (
                      <button
                        key={number}
                        type="button"
                        aria-pressed={number === sheet.round}
                        onClick={() => findings.choose(number)}
                      >
                        {words}
                      </button>
                    ))}
                  </fieldset>
                )}
                {sheet.rounds.length > 1 && (
                  <p className="findings-judged">
                    {sheet.rounds.find(({ number }) => number === sheet.round)?.words}
                  </p>
                )}
              </div>
              <p className={sheet.cannotTell ? 'findings-cannot' : 'findings-said'}>{glued(sheet.answer)}</p>
            </section>
            <Cautions cautions={sheet.cautions} title="Before anything is checked" job={`${id} findings`} />
            <div className="findings-laid">
              <div className="findings-main">
                <ol className="findings-groups" aria-label="Findings, likeliest first">
                  {sheet.groups.map((group) => (
                    <FindingGroup
                      key={group.suspects[0]?.id ?? group.sentence}
                      group={group}
                      open={open}
                      onOpen={setOpen}
                      drawn={(suspect) =>
                        !wide && !printing ? <FindingDrawn corners={sheet.corners} suspect={suspect} /> : null
                      }
                    />
                  ))}
                </ol>
                {sheet.others && <p className="findings-others">{glued(sheet.others)}</p>}
                <FindingsChecks checks={sheet.checks} id={id} onFound={found} />
              </div>
              <aside className="findings-beside" aria-label="Drawing, parts and wear">
                {shown && (wide || printing) && <FindingDrawn corners={sheet.corners} suspect={shown} />}
                <FindingsLists sheet={sheet} />
              </aside>
            </div>
          </div>
        )}
      </StageFrame>
      {sheet && <FindingsNext sheet={sheet} working={findings.working} id={id} />}
    </>
  )
}
