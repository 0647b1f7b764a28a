const words: Readonly<Record<string, string>> = {
  wheelTurn: 'wheel turned by',
  reading: 'gauge shows',
  readings: 'reading',
  steer: 'steer angle',
  camber: 'gauge across the wheel',
  tilt: 'gauge fore and aft',
  sweeps: 'sweep',
  wheels: '',
  front: 'front edge',
  rear: 'rear edge',
  span: 'between the edges',
  hubs: 'string to hub,',
  wheelbase: 'wheelbase',
  along: 'bar back to hub,',
  belowHub: 'below the hub',
  levelled: 'level of the tape',
  radius: 'radius of the line',
  diameter: 'diameter',
  left: 'left lock',
  right: 'right lock',
}

/** A path of a log entry in words: "sweeps[0].left.camber" is "sweep 1, left lock, gauge across the wheel". */
export function fieldWords(path: string): string {
  const steps = (path.match(/[^.[\]"]+/g) ?? []).map((step) =>
    /^\d+$/.test(step) ? String(Number(step) + 1) : (words[step] ?? step),
  )
  return steps
    .filter((step) => step !== '')
    .join(', ')
    .replace(/, (\d+)/g, ' $1')
    .replace(/,,/g, ',')
}
