import { readFileSync } from 'node:fs'
import type { Entry } from '../src/job/index.ts'
import { digestOf, proofOf, proofText, sealEntries } from '../src/proof/index.ts'
import { sealedBy, whose } from './long-log.ts'

const folder = new URL('../examples/', import.meta.url)
const json = (path: string): unknown => JSON.parse(readFileSync(new URL(path, folder), 'utf8'))
const id = 'port-unit-07'

/** The files by which the demo bus is worked. */
const files = [
  ['front', 'corner', `${id}/front.corner.json`],
  ['rear', 'corner', `${id}/rear.corner.json`],
  ['spec', 'spec', `${id}/${id}.spec.json`],
  ['kit', 'kit', 'port-kit.kit.json'],
] as const

/**
 * The demo bus as a job that a browser may keep: its own entries, sealed, and after them looks at its parts and work on
 * its bolts until the log is as long as asked.
 */
export async function sealedDemo(size: number): Promise<{ readonly job: string; readonly text: string }> {
  const { entries: demo } = json(`${id}/${id}.job.json`) as { readonly entries: readonly Entry[] }
  const used = files.map(([role, what, path]) => {
    const file = json(path) as { readonly id: string }
    return { role, what, file, digest: digestOf(what, file) }
  })
  const [opened, ...rest] = demo
  const bare: Entry[] = [
    { ...opened!, data: { ...opened!.data, number: whose.job } },
    ...rest,
    ...used.map(({ role, file, digest }) => ({
      kind: 'works with',
      data: { role, id: file.id, digest },
    })),
  ]
  const acts = demo.filter(({ kind }) => kind === 'undone' || kind === 'tightened')
  for (let i = 0; bare.length < size; i++) {
    const { kind, data } = acts[Math.floor(i / 3) % acts.length]!
    bare.push(
      i % 3 === 0
        ? { kind, data }
        : {
            kind: 'note',
            data: { text: `The bolt of the lower arm, look ${i}: dry, and clean to its shank.` },
          },
    )
  }
  const entries = await sealEntries(bare, await sealedBy('03'))
  const proof = proofOf({ ...whose, entries, files: used, root: null, workshopLog: [] })
  return { job: whose.job, text: proofText(proof) }
}
