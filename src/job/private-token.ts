const form = /^private:([0-9a-f]{64})$/

/**
 * What stands in a sealed entry in place of a personal value.
 *
 * @param commitment 64 small hexadecimal digits
 * @source own derivation: docs/methods/record.md
 */
export const tokenOf = (commitment: string): string => `private:${commitment}`

/**
 * The commitment that a text is the token of; null for any other text.
 *
 * @source own derivation: docs/methods/record.md
 * @example commitmentIn('private:xy') // null
 */
export const commitmentIn = (text: string): string | null => form.exec(text)?.[1] ?? null
