import { Refusal } from '../../quantity/index.ts'
import { refused } from '../refused.ts'

/**
 * What the browser said about its storage, as a refusal in plain words. What is a refusal already stays it; what is no
 * trouble of storage is thrown as it is.
 *
 * @source W3C Indexed Database API 3.0, 5 (exceptions)
 */
export function browserTrouble(error: unknown): Refusal {
  if (error instanceof Refusal) return error
  if (!(error instanceof DOMException)) throw error
  switch (error.name) {
    case 'QuotaExceededError':
      return refused(
        'no-room',
        error.name,
        'The browser gives this page no more room, so nothing was written.',
        'Export what is finished and delete it here, or make room on the device; then do the same again. What was kept before is all there.',
      )
    case 'VersionError':
      return refused(
        'newer',
        error.name,
        'A newer version of this page has kept jobs here, and this one cannot read them.',
        'Close all its windows, then load the page again.',
      )
    case 'SecurityError':
    case 'NotAllowedError':
    case 'InvalidStateError':
      return refused(
        'read-only',
        error.name,
        'This browser lets the page keep nothing here: a private window, or its settings, forbid it.',
        'Open the page in a window of the usual kind, or allow it to keep data. Until then export each job as a file.',
      )
    default:
      return refused(
        'unreadable',
        `${error.name}: ${error.message}`,
        `The browser’s storage does not work (${error.name}). Nothing was written.`,
        'Load the page again. If it stays so, start the browser anew and look whether the disk is full.',
      )
  }
}
