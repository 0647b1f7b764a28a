import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { type Entry, foldJob } from '../../src/job/index.ts'
import { revealed, signerOf } from '../../src/proof/index.ts'
import { erasePrivate, fileStore, keepPrivate, privateBeside, takeIn } from '../../src/store/index.ts'
import { refusal } from './log-store-contract.ts'
import { whose } from './sealed-log.ts'

const top = mkdtempSync(join(tmpdir(), 'axlewright-private-'))
afterAll(() => rmSync(top, { recursive: true, force: true }))
const place = () => mkdtempSync(join(top, 'place-'))
const how = { signer: await signerOf('01'.repeat(32)), person: 'KB' }
const arrival = (plate = 'PO-RT 07'): Entry => ({
  kind: 'arrival',
  data: { asked: 'pulls', plate, owner: 'Iseult Quayle-Ferry' },
})
const told: Entry = { kind: 'not road-ready', data: { reason: 'brakes', told: 'Ansgar Pontoon', hand: 'KB' } }
const file = (...entries: readonly Entry[]) => ({ path: 'a.job.json', whose, entries })
/** All that is on disk under a folder. */
const bytesIn = (folder: string): string =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => join(folder, name))
    .filter((path) => statSync(path).isFile())
    .map((path) => readFileSync(path, 'latin1'))
    .join('\n')

test('ST23 what is personal is kept beside before the log names it, and the log has none of it', async () => {
  const at = place()
  const kept = fileStore(at).job(whose.job)
  await takeIn(kept, file(arrival(), told), how)
  const log = readFileSync(join(at, readdirSync(at)[0]!, 'log.jsonl'), 'utf8')
  for (const secret of ['PO-RT', 'Iseult', 'Ansgar']) expect(log).not.toContain(secret)
  const { entries } = await kept.read()
  const { values, spoilt } = await privateBeside(kept, entries)
  expect([values.length, spoilt]).toEqual([3, []])
  expect(foldJob(revealed(entries, values).entries).arrival).toMatchObject({ plate: 'PO-RT 07' })
  // The same file again: what was sealed as a token is what stands in it in clear.
  expect((await takeIn(kept, file(arrival(), told), how)).appended).toEqual([])
  expect(await refusal(() => takeIn(kept, file(arrival('PO-RT 08'), told), how))).toBe('sealed-otherwise')
  expect((await kept.kept()).length).toBe(3)
})

test('ST23 what is erased is in no byte of the folder, and stays so when an older copy comes in', async () => {
  const at = place()
  const kept = fileStore(at).job(whose.job)
  await takeIn(kept, file(arrival(), told), how)
  const before = await kept.read()
  const { values } = await privateBeside(kept, before.entries)
  expect(bytesIn(at)).toContain('Iseult')
  const owner = values.find(({ value }) => value.startsWith('Iseult'))!
  expect(await erasePrivate(kept, [owner.commitment, owner.commitment])).toBe(1)
  expect(await erasePrivate(kept, [owner.commitment])).toBe(0)
  const bytes = bytesIn(at)
  expect(bytes).not.toContain('Iseult')
  expect(bytes).not.toContain(Buffer.from(owner.salt, 'hex').toString('latin1'))
  expect(bytes).toContain('Ansgar')
  expect((await kept.read()).entries).toEqual(before.entries)
  expect(await keepPrivate(kept, values)).toEqual([])
  expect(await takeIn(kept, { ...file(arrival(), told), values }, how)).toMatchObject({ appended: [] })
  expect((await takeIn(kept, file(arrival(), told), how)).appended).toEqual([])
  expect(bytesIn(at)).not.toContain('Iseult')
  // Where nothing was erased, a copy's values are taken in; one that was changed is not.
  const other = fileStore(place()).job(whose.job)
  await takeIn(other, { ...file(...before.entries), values }, how)
  expect((await privateBeside(other, before.entries)).values.length).toBe(3)
  const third = place()
  expect(await keepPrivate(fileStore(third).job(whose.job), [{ ...owner, value: 'Somebody Else' }])).toEqual(
    [],
  )
  expect(bytesIn(third)).not.toContain('Somebody Else')
})

test('ST23 what lies there and was changed is told, and never shown', async () => {
  const at = place()
  const kept = fileStore(at).job(whose.job)
  await takeIn(kept, file(arrival(), told), how)
  const { entries } = await kept.read()
  const { values } = await privateBeside(kept, entries)
  const [one] = values
  writeFileSync(join(at, readdirSync(at)[0]!, 'beside', one!.commitment), 'another plate')
  const again = await privateBeside(kept, entries)
  expect(again.spoilt).toEqual([one!.commitment])
  expect(again.values.length).toBe(2)
})

test('ST23 nothing personal stays when the log could not be written', async () => {
  const at = place()
  const kept = fileStore(at).job(whose.job)
  const failing: typeof kept = {
    ...kept,
    change: async (of, write) => {
      await kept.change(of, async (known) => {
        await write(known)
        throw new Error('no ink')
      })
      throw new Error('unreached')
    },
  }
  await expect(takeIn(failing, file(arrival()), how)).rejects.toThrow('no ink')
  expect(bytesIn(at)).not.toContain('Iseult')
})
