/**
 * A tool as people ask for it.
 *
 * @param tool of an action; null where the hands do
 * @source own choice
 * @example planToolWords('spanner 24 mm') // 24 mm spanner
 * @example planToolWords('torque wrench, 24 mm') // torque wrench, 24 mm socket
 */
export function planToolWords(tool: string | null): string {
  if (tool === null) return ''
  const sized = /^(spanner|socket) ([\d.]+ mm)$/.exec(tool)
  if (sized) return `${sized[2]} ${sized[1]}`
  const wrench = /^torque wrench, ([\d.]+ mm)$/.exec(tool)
  if (wrench) return `torque wrench, ${wrench[1]} socket`
  const thread = /^torque wrench, (M\d.*)$/.exec(tool)
  if (thread) return `torque wrench, socket for ${thread[1]}`
  return tool === 'torque wrench, spanner' ? 'torque wrench, socket to fit' : tool
}
