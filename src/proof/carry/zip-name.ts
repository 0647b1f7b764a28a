/**
 * Whether a file within a ZIP may be called so: plain characters, in folders below the place where it is unpacked, short
 * enough for any disk, and nothing that a system takes for something else.
 *
 * @source APPNOTE.TXT 6.3.10, 4.4.17 (no drive, no leading slash); common practice, no source (reserved names)
 * @example isZipName('photos/0a.jpg') // true
 * @example isZipName('../a') // false
 */
export const isZipName = (name: string): boolean =>
  name.length <= 600 &&
  name.split('/').length <= 6 &&
  name
    .split('/')
    .every(
      (part) =>
        /^[A-Za-z0-9%_-][A-Za-z0-9%._-]{0,254}$/.test(part) &&
        !part.endsWith('.') &&
        !/^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i.test(part),
    )
