/** A length as a hand reads it, to 0.01 mm. */
export const lengthText = (length: number): string => `${Number((length * 1000).toFixed(2))} mm`
