import { Refusal } from '../quantity/index.ts'
import { refused } from './refused.ts'

const noRoom = ['ENOSPC', 'EDQUOT', 'EFBIG']
const readOnly = ['EACCES', 'EPERM', 'EROFS']

/**
 * What the system said about a file, as a refusal in plain words. What is a refusal already stays it.
 *
 * @param path of the file or folder that it was about
 * @source common practice, no source
 */
export function fileTrouble(path: string, error: unknown): Refusal {
  if (error instanceof Refusal) return error
  const { code } = error as NodeJS.ErrnoException
  if (code === undefined) throw error
  if (noRoom.includes(code))
    return refused(
      'no-room',
      code,
      `${path}: There is no room left on the disk, so nothing was written.`,
      'Make room, then say the same again. What was acknowledged before is all there.',
    )
  if (readOnly.includes(code))
    return refused(
      'read-only',
      code,
      `${path}: You may not write or read here, so nothing was written.`,
      'Take a folder of your own, or have the rights of this one changed.',
    )
  if (code === 'ENOENT')
    return refused('no-job', code, `${path}: There is nothing there.`, 'Check the path and try again.')
  if (code === 'ENOTDIR' || code === 'EISDIR')
    return refused(
      'no-folder',
      code,
      `${path}: A file stands where a folder should be, or the other way round.`,
      'Name the job’s folder, or another place.',
    )
  return refused(
    'unreadable',
    code,
    `${path}: The system cannot work with it (${code}).`,
    'Check the disk and the path, and try again.',
  )
}
