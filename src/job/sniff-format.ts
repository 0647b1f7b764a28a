/** The four open formats. @source definition */
export type FormatName = 'corner' | 'spec' | 'kit' | 'job'

const names: readonly FormatName[] = ['corner', 'spec', 'kit', 'job']

/** A member that only this format has, for files without a telling name. */
const telling: Readonly<Record<FormatName, string>> = {
  corner: 'points',
  spec: 'limits',
  kit: 'gauges',
  job: 'entries',
}

/**
 * Which of the four formats a file is: by its `kind`, else by its name (`front.corner.json`), else by a
 * member that only one format has.
 *
 * @param name the file's name, with or without folders
 * @param json its value
 * @returns null when nothing tells
 * @source definition
 * @example sniffFormat({ name: 'port-kit.kit.json', json: {} }) // 'kit'
 */
export function sniffFormat({ name, json }: { name: string; json: unknown }): FormatName | null {
  const file = (typeof json === 'object' && json !== null ? json : {}) as Record<string, unknown>
  const byName = /\.(corner|spec|kit|job)\.json$/i.exec(name)?.[1]?.toLowerCase()
  return (
    names.find((format) => file.kind === format) ??
    names.find((format) => byName === format) ??
    names.find((format) => Object.hasOwn(file, telling[format])) ??
    null
  )
}
