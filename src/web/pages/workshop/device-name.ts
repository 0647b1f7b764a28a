/** How this device is called until somebody says it better: by what it is, in plain words. */
export function deviceName(): string {
  const { userAgent, maxTouchPoints } = navigator
  if (/Mobi/.test(userAgent)) return 'a telephone'
  return maxTouchPoints > 1 ? 'a tablet' : 'a computer'
}
