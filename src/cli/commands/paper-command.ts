import manifest from '../../../package.json' with { type: 'json' }
import { inCausalOrder, isSealed, type SealedEntry, withPersonal } from '../../job/index.ts'
import { type Paper, paperHtml, paperPdf, paperSeal, verdictOf } from '../../proof/index.ts'
import { usUnits } from '../../quantity/index.ts'
import { proofSheetFrom } from '../../sheet/index.ts'
import { writeWhole } from '../../store/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { paperFonts } from '../files/paper-fonts.ts'
import { type Carried, carried } from '../record/carried.ts'
import { carriedSources } from '../record/carried-sources.ts'
import { ownWorkshop } from '../record/own-workshop.ts'

/** What `paper` can be told. */
export interface PaperOptions {
  readonly html?: string
  readonly pdf?: string
  readonly letter?: boolean
  readonly root?: string
  readonly with?: readonly string[]
  readonly us?: boolean
  readonly erased?: boolean
  readonly overwrite?: boolean
}

/** `axlewright paper JOB_OR_PROOF`: the proof sheet as a page or a PDF; 0 only when it is finished and proven. */
export async function paperCommand(path: string, options: PaperOptions): Promise<Outcome> {
  const { html, pdf, letter, us, erased, overwrite } = options
  if (html === undefined && pdf === undefined)
    throw new BadInput(['Say where the paper goes: --html FILE, --pdf FILE, or both.'])
  const job = await carried(path)
  if (job.spoilt[0])
    throw new BadInput([
      `${path}, line ${job.spoilt[0].line}: ${job.spoilt[0].sentence} Merge it with another copy of the job first.`,
    ])
  const sources = carriedSources(job, options.with ?? [])
  const log = erased ? withPersonal(sources.job.entries, () => 'erased') : sources.job.entries
  const sheet = proofSheetFrom(
    { ...sources, job: { ...sources.job, entries: log } },
    {
      ...(us ? { units: usUnits } : {}),
      ...(erased ? { personal: 'erased' } : {}),
    },
  )
  const paper: Paper = { sheet, seal: await sealOf(job, options.root), version: manifest.version }
  const size = letter ? 'Letter' : 'A4'
  const replace = overwrite ?? false
  const created = job.entries.findLast(({ at }) => at)?.at ?? null
  const written: string[] = []
  if (html !== undefined) {
    writeWhole(html, paperHtml(paper, size), { replace })
    written.push(html)
  }
  if (pdf !== undefined) {
    writeWhole(pdf, await paperPdf(paper, { size, fonts: paperFonts(), created }), { replace })
    written.push(pdf)
  }
  const lines = [
    ...job.told,
    `The proof sheet is in ${written.join(' and ')} (${size}).`,
    sheet.sentence,
    ...sheet.open.map((text) => `  □ ${text}`),
    `${paper.seal.head}.`,
  ]
  return { out: `${lines.join('\n')}\n`, code: sheet.finished && paper.seal.isGood ? 0 : 1 }
}

async function sealOf({ whose, entries, snapshots, values, proof }: Carried, named: string | undefined) {
  const sealed = inCausalOrder(entries).filter(isSealed) as readonly SealedEntry[]
  const own = await ownWorkshop()
  const workshop = own?.name === whose.workshop ? own : null
  const trusted = named ?? own?.root
  const root = workshop?.root ?? proof?.head.root ?? null
  const verdict = await verdictOf(
    proof ?? {
      head: { format: 1, kind: 'proof', ...whose, root },
      entries: sealed,
      snapshots,
      private: values,
      workshop: workshop?.log ?? [],
    },
    trusted === undefined ? {} : { trusted },
  )
  return paperSeal({
    verdict,
    entries: proof?.entries ?? sealed,
    root: proof?.head.root ?? root,
    bare: entries.length - sealed.length,
  })
}
