/** A name at the start of a line. */
export const upper = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`
