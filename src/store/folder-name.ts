/**
 * The name of a job's folder: the job's own, with what a file system may not take written as bytes in hexadecimal.
 *
 * @source RFC 3986, 2.1 (form of the escapes)
 * @example folderName('7-0412') // '7-0412'
 * @example folderName('a/b') // 'a%2Fb'
 */
export const folderName = (job: string): string =>
  encodeURIComponent(job)
    .replace(/[!'()*~]/g, (c) => `%${c.charCodeAt(0).toString(16).toUpperCase()}`)
    .replace(/^\./, '%2E')
    .replace(/\.$/, '%2E')

/**
 * The job whose folder has this name; null where no job's has.
 *
 * @source definition
 * @example jobOfFolder('a%2Fb') // 'a/b'
 */
export function jobOfFolder(name: string): string | null {
  try {
    const job = decodeURIComponent(name)
    return folderName(job) === name ? job : null
  } catch {
    return null
  }
}
