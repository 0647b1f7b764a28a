/** Words as a sentence begins with them. */
export const sentenceStart = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1)
