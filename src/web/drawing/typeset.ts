/** A number as typed, with the true minus: "-1.2°" is shown as "−1.2°". */
export const typeset = (text: string): string => text.replace(/(^|[\s…(])-(?=\d)/g, '$1−')
