import type { SheetWhy } from '../../../sheet/index.ts'
import { chance } from './chance.ts'
import './why.css'

/** Why this number: formula, corrections, whose errors make the spread, source. */
export function Why({ why, of }: { why: SheetWhy; of: string }) {
  return (
    <section className="why" aria-label={`Why this number: ${of}`}>
      <h4 className="overline">Why this number</h4>
      <p className="why-formula">{why.formula}</p>
      {why.corrections.length > 0 && <p>Corrected for {why.corrections.join(', ')}.</p>}
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
                <span className="figure-number">{chance(share.share)}</span>
                <span>
                  {share.source}
                  {share.text && share.text !== share.source ? `: ${share.text}` : ''}
                </span>
              </li>
            ))}
          </ol>
        </>
      )}
      <p className="why-source">{why.source}</p>
    </section>
  )
}
