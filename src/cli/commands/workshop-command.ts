import { join } from 'node:path'
import type { SealedEntry } from '../../job/index.ts'
import { inCausalOrder } from '../../job/index.ts'
import { fingerprint, verifyEntries, workshopState } from '../../proof/index.ts'
import { beginWorkshop, fileStore, workshopJob } from '../../store/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { carried, proofBytes } from '../record/carried.ts'
import { deviceSigner } from '../record/device-signer.ts'
import { ownFolder } from '../record/own-folder.ts'
import { ownWorkshop, workshopFolder } from '../record/own-workshop.ts'
import { type ByRoot, neededWorkshop, speak } from '../record/speak.ts'

const said = (lines: readonly string[]): Outcome => ({ out: `${lines.join('\n')}\n`, code: 0 })

/** `axlewright workshop make NAME`: a workshop with its root, which is shown once, and this device as its owner. */
export async function makeWorkshop(name: string, { device: called }: { device: string }): Promise<Outcome> {
  const { paper, fingerprint: root } = await beginWorkshop(fileStore(ownFolder()), {
    name,
    called,
    device: await deviceSigner(),
  })
  return said([
    `“${name}” is made, and this device, “${called}”, is its owner.`,
    '',
    'Write this on paper now, and lock the paper away. It is shown once and kept nowhere. Whoever has it can speak for',
    'the workshop; without it nobody can, when the last owner’s device is lost.',
    '',
    ...paper.map((line) => `    ${line}`),
    '',
    'The last group is a check. This is no secret, and stands on every proof; others compare it:',
    '',
    `    root ${root}`,
  ])
}

/** `axlewright workshop list`: the workshop, its root, its devices, and this one. */
export async function listWorkshop({ json }: { json?: boolean }): Promise<Outcome> {
  const own = await ownWorkshop()
  const device = await deviceSigner()
  if (json)
    return said([
      JSON.stringify(
        {
          device: device.key,
          workshop: own && { ...own.state, name: own.name, root: own.root, fingerprint: own.fingerprint },
        },
        null,
        2,
      ),
    ])
  const mine = `this device: ${fingerprint(device.key)}\n    its key, for an owner to certify: ${device.key}`
  if (!own) return said(['This device belongs to no workshop yet.', mine])
  return said([
    `“${own.name}”, root ${own.fingerprint}`,
    ...own.state.devices.map(
      (one) =>
        `  ${fingerprint(one.device)}  ${one.name}${one.owner ? ', owner' : ''}${one.revoked === null ? '' : `, revoked: ${one.revoked}`}${one.device === device.key ? ', this one' : ''}`,
    ),
    ...own.state.people.map(({ sign, role }) => `  person ${sign}, ${role ?? 'technician'}`),
    ...own.state.left.map((sign) => `  person ${sign}, left`),
    ...(own.state.keepsMonths === null
      ? []
      : [`  what is personal is kept ${own.state.keepsMonths} months after a job’s last entry`]),
    mine,
    `its log, for other devices to join by: ${join(ownFolder(), workshopJob, 'log.jsonl')}`,
  ])
}

/** `axlewright workshop certify KEY NAME`: lets a device sign for the workshop. */
export async function certifyDevice(
  key: string,
  name: string,
  { owner, byRoot }: ByRoot & { owner?: boolean },
): Promise<Outcome> {
  if (!/^[0-9a-f]{64}$/.test(key))
    throw new BadInput([
      `“${key}” is no key of a device: it has 64 digits from 0 to 9 and a to f. "axlewright workshop list" shows it on the device itself.`,
    ])
  await speak(
    { kind: 'device certified', data: { device: key, name, owner: owner ?? false } },
    { ...(byRoot ? { byRoot } : {}) },
  )
  return said([
    `“${name}” (${fingerprint(key)}) may sign${owner ? ', and certify and revoke others' : ''}.`,
    'Bring the workshop’s log to the other devices, so that they know: "axlewright workshop join".',
  ])
}

/** `axlewright workshop revoke DEVICE --why WHY`: a device that is lost, or left, is known no more. */
export async function revokeDevice(
  which: string,
  { why, byRoot }: ByRoot & { why: string },
): Promise<Outcome> {
  const own = await neededWorkshop()
  const asked = which.toLowerCase().replace(/\s+/g, '')
  const found = own.state.devices.filter(
    ({ device, name }) =>
      device === asked || name === which || fingerprint(device).replace(/\s+/g, '') === asked,
  )
  if (found.length !== 1)
    throw new BadInput([
      found.length === 0
        ? `No device “${which}” is certified. "axlewright workshop list" shows them all.`
        : `${found.length} devices are called “${which}”. Say which by its fingerprint.`,
    ])
  const { device, name } = found[0]!
  await speak({ kind: 'device revoked', data: { device, why } }, { ...(byRoot ? { byRoot } : {}) })
  return said([`“${name}” (${fingerprint(device)}) is revoked: ${why}.`])
}

/** `axlewright workshop join FILE --root FINGERPRINT`: takes in the workshop's log, or what is newer in it. */
export async function joinWorkshop(path: string, { root }: { root: string }): Promise<Outcome> {
  const log = await logIn(path)
  const first = log[0]
  const asked = root.toLowerCase().replace(/\s+/g, '')
  if (!first || first.job !== workshopJob)
    throw new BadInput([
      `${path}: There is no workshop’s log in it. Name a workshop’s log.jsonl, or a proof.`,
    ])
  const print = fingerprint(first.device)
  if (asked !== print.replace(/\s+/g, '') && asked !== first.device)
    throw new BadInput([
      `${path}: Its root is ${print}, and not the one that you named. Compare it with the paper; nothing was taken in.`,
    ])
  const own = await ownWorkshop()
  if (own && own.root !== first.device)
    throw new BadInput([
      `This device belongs to “${own.name}”, whose root is another one. Nothing was taken in.`,
    ])
  const whose = { workshop: first.workshop, job: workshopJob }
  const together = inCausalOrder([...(own?.log ?? []), ...log]) as readonly SealedEntry[]
  const [broken] = await verifyEntries(together, whose)
  if (broken)
    throw new BadInput([
      `${path}: Entry ${broken.entry + 1} of the workshop’s log is not intact: ${broken.sentence} Nothing was taken in.`,
    ])
  const { appended } = await workshopFolder().change(whose, () => together)
  const device = await deviceSigner()
  const state = workshopState(together, first.device)
  const mine = state.devices.find((one) => one.device === device.key)
  return said([
    `“${first.workshop}”: ${appended.length} entries of its log taken in.`,
    mine?.revoked === null
      ? `This device is “${mine.name}” there.`
      : `This device is not certified there. An owner says: axlewright workshop certify ${device.key} "its name"`,
  ])
}

async function logIn(path: string): Promise<readonly SealedEntry[]> {
  const job = await carried(path)
  return proofBytes(path) ? (job.proof?.workshop ?? []) : (job.entries as readonly SealedEntry[])
}
