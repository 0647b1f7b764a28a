import type { Finding, Skipped } from './finding.ts'

/** What was found, in lines for people. */
export function printed(each: Finding | Skipped): string {
  if ('skipped' in each) return `${each.what}\n  skipped: ${each.skipped}\n`
  const verdict =
    each.target === null ? [] : [`target ${each.target} ${each.unit}: ${each.held ? 'held' : 'missed'}`]
  return `${[each.what, ...each.lines.map((line) => `  ${line}`), ...verdict.map((line) => `  ${line}`)].join('\n')}\n`
}
