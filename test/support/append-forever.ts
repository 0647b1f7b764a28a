// Appends entries to a job's folder, one by one, and says the id of each on standard output once it is acknowledged.
//   node append-forever.mjs FOLDER [HOW MANY [whole]]     whole: then a file of 20 kB is written into it in one go
import { writeSync } from 'node:fs'
import { join } from 'node:path'
import { sealEntries, signerOf } from '../../src/proof/index.ts'
import { Refusal } from '../../src/quantity/index.ts'
import { jobFolder, writeWhole } from '../../src/store/index.ts'

const [folder = '', most = '1000000', then] = process.argv.slice(2)
const whose = { workshop: 'Harbour yard', job: '7-0412' }
const signer = await signerOf('01'.repeat(32))
const job = jobFolder(folder)
const how = { ...whose, signer, person: 'KB', at: '2026-03-14T18:00:00Z', offset: '+01:00' }
try {
  for (let i = 0; i < Number(most); i++) {
    const { appended } = await job.change(whose, (known) =>
      sealEntries([...known, { kind: 'note', data: { text: `note ${i}, ${'x'.repeat(100)}` } }], how),
    )
    writeSync(1, `${appended[0]!.id}\n`)
  }
  if (then === 'whole') writeWhole(join(folder, 'whole.json'), 'x'.repeat(20_000), { replace: true })
} catch (error) {
  if (!(error instanceof Refusal)) throw error
  writeSync(2, `${error.code}\n`)
  process.exitCode = 2
}
