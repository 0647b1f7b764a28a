import type { Finding } from './finding.ts'

/** What was found, in lines for people. */
export function printed({ what, lines, target, unit, held }: Finding): string {
  const verdict = target === null ? [] : [`target ${target} ${unit}: ${held ? 'held' : 'missed'}`]
  return `${[what, ...[...lines, ...verdict].map((line) => `  ${line}`)].join('\n')}\n`
}
