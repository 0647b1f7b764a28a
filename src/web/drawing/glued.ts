/** A sentence whose numbers keep their sign and their unit when lines are broken. */
export function glued(sentence: string): string {
  return sentence
    .replace(/(\p{L})'(?=\p{L})/gu, '$1’')
    .replace(/± (?=\d)/g, '±\u00a0')
    .replace(/(\d) (?=(?:%|°|mm|m|N·m|km|min|h|turns?|o’clock|o'clock)(?![\p{L}]))/gu, '$1\u00a0')
}
