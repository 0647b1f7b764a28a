import { memo } from 'react'
import { formatChance } from '../../../quantity/index.ts'
import type { SheetWhy } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import './why.css'

/** Why this number: formula, corrections, whose errors make the spread, source. */
export const Why = memo(function Why({ why, of }: { why: SheetWhy; of: string }) {
  return (
    <section className="why" aria-label={`Why this number: ${of}`}>
      <h4 className="overline">Why this number</h4>
      <p className="why-formula">{why.formula}</p>
      {why.corrections.length > 0 && (
        <div>
          <p>Corrected for</p>
          <ul className="why-corrections">
            {why.corrections.map((correction) => (
              <li key={correction}>{glued(correction)}</li>
            ))}
          </ul>
        </div>
      )}
      {why.shares.length > 0 && (
        <>
          <div className="why-split" aria-hidden="true">
            {why.shares.map((share) => (
              <span key={share.source} style={{ flexGrow: Math.max(share.share, 0.004) }} />
            ))}
          </div>
          <ol className="why-shares">
            {why.shares.map((share) => (
              <li key={share.source}>
                <span className="figure-number">{formatChance(share.share)}</span>
                <span>
                  {share.source}
                  {/\p{L}/u.test(share.text) && share.text !== share.source ? `: ${glued(share.text)}` : ''}
                </span>
              </li>
            ))}
          </ol>
        </>
      )}
      <p className="why-source">{why.source}</p>
    </section>
  )
})
