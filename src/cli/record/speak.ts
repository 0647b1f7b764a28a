import { readFileSync } from 'node:fs'
import { type Entry, inCausalOrder } from '../../job/index.ts'
import { type Signer, sealEntries, signerOf, workshopState } from '../../proof/index.ts'
import { clockNow, type OwnWorkshop, rootFromPaper, workshopJob } from '../../store/index.ts'
import { BadInput } from '../files/outcome.ts'
import { deviceSigner } from './device-signer.ts'
import { ownWorkshop, workshopFolder } from './own-workshop.ts'

/** Who says it: this device, or the root from paper, typed or piped in. */
export interface ByRoot {
  readonly byRoot?: boolean
}

/** The workshop to which this device belongs, which must be. */
export async function neededWorkshop(): Promise<OwnWorkshop> {
  const own = await ownWorkshop()
  if (own) return own
  throw new BadInput([
    'This device belongs to no workshop yet. Make one, or join the one there is: "axlewright workshop --help".',
  ])
}

/** Says something in the workshop's log, as long as it counts there. */
export async function speak(entry: Entry, { byRoot }: ByRoot): Promise<void> {
  const own = await neededWorkshop()
  const signer: Signer = byRoot
    ? await signerOf(rootFromPaper(readFileSync(0, 'utf8')))
    : await deviceSigner()
  if (byRoot && signer.key !== own.root)
    throw new BadInput(['This is the root of another workshop. Nothing was written.'])
  const whose = { workshop: own.name, job: workshopJob }
  await workshopFolder().change(whose, async (known) => {
    const log = await sealEntries([...known, entry], {
      ...whose,
      signer,
      person: byRoot ? 'root' : 'owner',
      ...clockNow(),
    })
    const passed = workshopState(log, own.root).passedOver.find(
      ({ entry: at }) => inCausalOrder(log)[at] === log.at(-1),
    )
    if (passed) throw new BadInput([`It would not count. ${passed.sentence} Nothing was written.`])
    return log
  })
}
