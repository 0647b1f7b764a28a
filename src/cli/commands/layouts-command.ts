import { startingLayout, startingLayouts } from '../../corner/index.ts'
import type { Outcome } from '../files/outcome.ts'
import { writeTextFile } from '../files/write-text-file.ts'
import { paragraph } from '../text/paragraph.ts'

/** Options of `axlewright layouts`. */
export interface LayoutsOptions {
  readonly overwrite?: boolean
  readonly json?: boolean
}

/**
 * `axlewright layouts [ID] [FILE]`: the layouts to start a corner model from; with an id, its file: written where it is
 * told, else on standard output.
 */
export async function layoutsCommand(
  id: string | undefined,
  file: string | undefined,
  { overwrite = false, json = false }: LayoutsOptions,
): Promise<Outcome> {
  if (id === undefined)
    return { out: json ? `${JSON.stringify(startingLayouts, null, 2)}\n` : listText(), code: 0 }
  const text = `${JSON.stringify(await startingLayout(id), null, 2)}\n`
  if (file === undefined) return { out: text, code: 0 }
  writeTextFile(file, text, { replace: overwrite })
  return {
    out: `${file} is a ${id} corner to start from. Its points are typical, not measured: measure yours, then “axlewright check ${file}”.\n`,
    code: 0,
  }
}

const listText = (): string =>
  `${startingLayouts
    .map(
      ({ id, name, axle, says }) =>
        `${id}\n${paragraph(`${name}, ${axle} axle`, '    ')}\n${paragraph(says, '    ')}`,
    )
    .join('\n')}\n\naxlewright layouts ID FILE writes one as a corner file to start from.\n`
