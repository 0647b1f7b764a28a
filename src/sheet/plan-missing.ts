import type { MissingTool } from '../plan/index.ts'

const remedies = {
  'borrow or buy': 'Borrow or buy it before the vehicle is lifted.',
  'measure the fastener, then look again': 'Measure them, write the sizes into the model, then plan again.',
} as const

/** What the kit lacks and what to do about it; a size that hand and torque wrench both lack is told once. */
export function planMissing(missing: readonly MissingTool[]): readonly string[] {
  const byHand = (size: string) =>
    missing.some(({ sentence }) => sentence === `No spanner or socket of ${size}.`)
  return missing.flatMap(({ sentence, remedy }) => {
    const wrench = /^No socket of ([\d.]+ mm): /.exec(sentence)?.[1]
    if (wrench !== undefined && byHand(wrench)) return []
    const size = /^No spanner or socket of ([\d.]+ mm)\.$/.exec(sentence)?.[1]
    const socket =
      size !== undefined && missing.some((one) => one.sentence.startsWith(`No socket of ${size}: `))
    return socket
      ? [`No spanner or socket of ${size}; the torque wrench needs the socket. ${remedies[remedy]}`]
      : [`${sentence} ${remedies[remedy]}`]
  })
}
