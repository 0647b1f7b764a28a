import { memo } from 'react'
import type { SheetClamp } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import { Cautions } from './cautions.tsx'
import './clamp-block.css'
import { HubRule } from './hub-rule.tsx'

/** The pose in which the bush bolts are final. */
export const ClampBlock = memo(function ClampBlock({ clamp, job }: { clamp: SheetClamp; job: string }) {
  return (
    <section aria-label={clamp.title} className="clamp">
      <h2>{clamp.title}</h2>
      <div className="clamp-pose">
        {clamp.target && <HubRule target={clamp.target.value} raise={clamp.raise?.value ?? 0} />}
        <dl>
          <dt>Hub to arch</dt>
          {clamp.target ? (
            <dd>
              <strong className="figure-number">{clamp.target.text}</strong>{' '}
              <span className="figure-number">{clamp.target.spread}</span>
              <p>{glued(clamp.targetWhy)}</p>
            </dd>
          ) : (
            <dd className="clamp-none">
              <strong>No height to aim at</strong>
              <p>{glued(clamp.targetWhy)}</p>
            </dd>
          )}
          {clamp.raise && (
            <>
              <dt>Raise the hub from hanging by</dt>
              <dd>
                <strong className="figure-number">{clamp.raise.text}</strong>{' '}
                <span className="figure-number">{clamp.raise.spread}</span>
              </dd>
            </>
          )}
          {clamp.armTurn && (
            <>
              <dt>The arm then turns against the body by</dt>
              <dd>
                <strong className="figure-number">{clamp.armTurn.text}</strong>{' '}
                <span className="figure-number">{clamp.armTurn.spread}</span>
              </dd>
            </>
          )}
        </dl>
      </div>
      {clamp.bushes.length > 0 && (
        <div className="clamp-bushes">
          <h3>What it costs to tighten them hanging</h3>
          <ul>
            {clamp.bushes.map((bush) => (
              <li key={`${bush.letter} ${bush.name}`}>
                <span className="clamp-letter">{bush.letter}</span>
                <div>
                  <p>
                    {bush.name}:{' '}
                    <span className="figure-number">{bush.twistHanging.text.replace(/^[−-]/, '')}</span> of
                    twist for life
                    {bush.torque && (
                      <>
                        , <span className="figure-number">{bush.torque.text}</span> against the spring
                      </>
                    )}
                    {bush.height && (
                      <>
                        , <span className="figure-number">{bush.height.text}</span> of ride height
                      </>
                    )}
                  </p>
                  <p className="clamp-rule">{bush.rule}</p>
                </div>
              </li>
            ))}
          </ul>
        </div>
      )}
      <Cautions cautions={clamp.cautions} title="Before the arm is raised" job={job} />
    </section>
  )
})
