import { useEffect, useId, useRef, useState } from 'react'
import type { PageProps } from '../../shell/page-props.ts'
import type { VerifyAsk, VerifySays } from '../../state/verify-messages.ts'
import { Beside } from '../beside.tsx'
import { ProofAnswers } from './proof-answers.tsx'
import './verify.css'

/** Looks a proof through, on this device alone: nothing of it goes anywhere. */
export function VerifyPage(page: PageProps) {
  const id = useId()
  const input = useRef<HTMLInputElement>(null)
  const worker = useRef<Worker | null>(null)
  const [file, setFile] = useState<{ name: string; bytes: Uint8Array } | null>(null)
  const [root, setRoot] = useState('')
  const [says, setSays] = useState<VerifySays | null>(null)
  useEffect(() => {
    document.title = 'Check a proof · Axlewright'
    return () => worker.current?.terminate()
  }, [])
  const look = (given: { name: string; bytes: Uint8Array }) => {
    worker.current?.terminate()
    const one = new Worker(new URL('../../verify.worker.ts', import.meta.url), { type: 'module' })
    worker.current = one
    one.onmessage = ({ data }: MessageEvent<VerifySays>) => setSays(data)
    one.onerror = () =>
      setSays({
        kind: 'trouble',
        trouble: {
          sentence: 'The part of this page that looks proofs through has stopped.',
          remedy: 'Load the page again, and take the file once more.',
        },
      })
    setSays({ kind: 'progress', done: 0, of: 0 })
    one.postMessage({ bytes: given.bytes, root: root.trim() } satisfies VerifyAsk)
  }
  return (
    <Beside here="verify" title="Check a proof" page={page}>
      <p className="beside-note">
        Three answers, each for itself: did anybody change it, whose hands wrote it, and what was signed off.
        It is looked through on this device, without a network.
      </p>
      <div className="beside-field">
        <label htmlFor={id}>The workshop’s root, as it stands on the printed sheet</label>
        <input
          id={id}
          value={root}
          autoComplete="off"
          autoCapitalize="none"
          spellCheck={false}
          placeholder="empty: this device’s own workshop"
          onChange={(event) => setRoot(event.target.value)}
        />
      </div>
      <div className="beside-do">
        <button type="button" className="primary" onClick={() => input.current?.click()}>
          Choose the file
        </button>
        {file && (
          <button type="button" onClick={() => look(file)}>
            Look again
          </button>
        )}
        <input
          ref={input}
          type="file"
          className="beside-file"
          aria-label="Proof of a job"
          tabIndex={-1}
          accept=".json,.zip,application/json"
          onChange={async ({ target }) => {
            const [chosen] = target.files ?? []
            target.value = ''
            if (!chosen) return
            const given = { name: chosen.name, bytes: new Uint8Array(await chosen.arrayBuffer()) }
            setFile(given)
            look(given)
          }}
        />
      </div>
      <div role="status">
        {says?.kind === 'progress' && (
          <p>
            {says.of > 0
              ? `${Math.floor((100 * says.done) / says.of)} % of ${says.of} entries looked through …`
              : 'Looking it through …'}
          </p>
        )}
        {says?.kind === 'trouble' && (
          <div className="beside-told">
            <p>{says.trouble.sentence}</p>
            <p>{says.trouble.remedy}</p>
          </div>
        )}
        {says?.kind === 'verdict' && <ProofAnswers name={file?.name ?? ''} says={says} />}
      </div>
    </Beside>
  )
}
