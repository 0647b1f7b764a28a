/** What the font of the file draws. @source the character map of Roboto 2 as the PDF library ships it */
const drawn =
  /[\n\u0020-\u007e\u00a0-\u017f\u01a0\u01a1\u01af\u01b0\u01fa-\u01ff\u0218-\u021b\u02c6\u02c7\u02d8-\u02dd\u0384-\u038a\u038c\u038e-\u03a1\u03a3-\u03ce\u0400-\u0482\u048a-\u0513\u1e80-\u1e85\u1e9e\u1ea0-\u1ef9\u2010\u2011\u2013-\u2015\u2018-\u201e\u2020-\u2022\u2026\u2030\u2032\u2033\u2039\u203a\u2044\u2070\u2074-\u208e\u20ac\u2116\u2122\u2126\u2153\u2154\u215b-\u215e\u2202\u2206\u2212\u221a\u221e\u2248\u2260\u2264\u2265\u25a0]/u
/** Signs that it does not draw, in words. */
const words: Readonly<Record<string, string>> = {
  '→': 'to',
  '↔': 'and',
  '✓': 'yes',
  '✕': 'no',
  '\u202f': ' ',
  '\u2009': ' ',
}

/**
 * Text as the file's font can draw it: a sign that it lacks in words, a letter that it lacks by its number, never an empty
 * box and never left out.
 */
export const drawable = (text: string): string =>
  [...text.normalize('NFC')]
    .map((char) =>
      drawn.test(char) ? char : (words[char] ?? `(U+${char.codePointAt(0)!.toString(16).toUpperCase()})`),
    )
    .join('')
