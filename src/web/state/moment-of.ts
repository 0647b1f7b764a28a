/** Now, as the log gets it: with the day of the device, or with a day of the job's own. */
export function momentOf(day: string | null): string {
  const now = new Date().toISOString()
  return day === null ? now : `${day}${now.slice(day.length)}`
}
