const fractions: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
}

/**
 * One way to write each mark: minus "-", minutes "'", seconds or inches '"', degree "°", product "·",
 * one space between words, fractions as digits. What it does not know it leaves alone.
 */
export function plainText(text: string): string {
  return text
    .replace(/[\u2212\u2010-\u2013\ufe63\uff0d]/g, '-')
    .replace(/[\u2033\u201c\u201d\u201f\u02ba]/g, '"')
    .replace(/[\u2032\u2018\u2019\u201b\u00b4\u02b9]/g, "'")
    .replace(/''/g, '"')
    .replace(/[\u00ba\u02da]/g, '°')
    .replace(/[\u22c5\u2219\u2022\u00d7*]/g, '·')
    .replace(/\u03bc/g, 'µ')
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[¼½¾⅓⅔⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]/g, (mark) => ` ${fractions[mark]}`)
    .replace(/\b(in|cm|mm)2\b/g, '$1²')
    .replace(/\s+/g, ' ')
    .trim()
}
