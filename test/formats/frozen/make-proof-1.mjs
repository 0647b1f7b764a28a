// Made the frozen proof of format 1 with what the rules of folding 1 knew, by the program as it was then (its state is
// that of those rules). It is never made again: a later version must go on verifying it, and what was signed must come out.
//   node --import tsx test/formats/frozen/make-proof-1.mjs
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { foldVersion } from '../../../src/job/index.ts'
import { proofOf, proofText, sealEntries, signerOf, signOffEntry } from '../../../src/proof/index.ts'

const here = dirname(fileURLToPath(import.meta.url))
const name = 'format-1-rules-1.proof'
const json = (path) => JSON.parse(readFileSync(join(here, path), 'utf8'))
if (existsSync(join(here, name))) console.log(`${name} stands already and stays.`)
else if (foldVersion !== 1)
  console.log(`This program folds by the rules ${foldVersion}; ${name} is made by rules 1.`)
else {
  const { workshop, job, entries } = json('format-1-every-kind.job.json')
  const [root, office, bay, lost] = await Promise.all(
    ['01', '02', '03', '04'].map((b) => signerOf(b.repeat(32))),
  )
  const how = (signer, at, of = job) => ({ workshop, job: of, signer, person: 'KB', at, offset: '+01:00' })
  const certified = (one, called, owner) => ({
    kind: 'device certified',
    data: { device: one.key, name: called, owner },
  })
  let log = await sealEntries(
    [{ kind: 'workshop made', data: { name: workshop } }, certified(office, 'office', true)],
    how(root, '2026-03-01T08:00:00Z', 'workshop'),
  )
  const more = [
    certified(bay, 'bay 2 tablet', false),
    certified(lost, 'pit tablet', false),
    { kind: 'device revoked', data: { device: lost.key, why: 'lost on the quay' } },
  ]
  log = await sealEntries([...log, ...more], how(office, '2026-03-01T08:10:00Z', 'workshop'))
  const files = [
    { what: 'corner', file: json('format-1.corner.json') },
    { what: 'spec', file: json('format-1.spec.json') },
    { what: 'kit', file: json('format-1.kit.json') },
  ]
  const [front, spec, kit] = files.map(({ file }) => file)
  const signing = { files: { front, spec, kit }, engine: '0.1.0', hand: 'KB' }
  const known = entries.filter(({ kind }) => kind !== 'signed off')
  let sealed = await sealEntries(known, how(bay, '2026-03-14T18:00:00Z'))
  const arrival = sealed.find(({ kind }) => kind === 'arrival')
  // What these rules do not know yet: another device with a newer version wrote it.
  const newer = [
    { kind: 'works with', data: { role: 'spec', id: 'port-unit-07-spec', digest: 'd'.repeat(64) } },
    { kind: 'correction', data: { of: arrival.id, data: { plate: 'PO-RT 07' } } },
    { kind: 'tide table', data: { high: '14:10' } },
  ]
  sealed = await sealEntries([...sealed, ...newer], how(office, '2026-03-14T18:10:00Z'))
  sealed = await sealEntries([...sealed, signOffEntry(sealed, signing)], how(bay, '2026-03-14T18:20:00Z'))
  sealed = await sealEntries(
    [...sealed, { kind: 'note', data: { text: 'The owner called: it runs straight.' } }],
    how(bay, '2026-03-20T09:00:00Z'),
  )
  writeFileSync(
    join(here, name),
    proofText(proofOf({ workshop, job, entries: sealed, files, root: root.key, workshopLog: log })),
  )
  console.log(`${name} frozen.`)
}
