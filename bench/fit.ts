import { adjustersOf, isWholeAxle, readCorner, startingLayout, startingLayouts } from '../src/corner/index.ts'
import { fitCoverage } from './fit-coverage.ts'
import { referenceSets } from './reference-sets.ts'

const degrees = (angle: number) => `${((angle * 180) / Math.PI).toFixed(3)}°`
const percent = (part: number, of: number) => `${((100 * part) / of).toFixed(1)} %`

/**
 * `npm run bench -- fit [vehicles [layout]]`: least squares on public reference sets beside a general solver; then twelve workshop measurements on drawn vehicles of each layout; whether the
 * foreseen effect of each adjuster's move lies within its stated 95 %, and how long a fit takes.
 *
 * @returns 0 when the share of every layout lies in 93–97 %, else 1
 */
export async function fitBench(vehicles = 2000, only = ''): Promise<0 | 1> {
  if (only === '') referenceSets()
  let code: 0 | 1 = 0
  let [all, inside, sharp, named] = [0, 0, 0, 0]
  for (const { id } of startingLayouts) {
    if (!id.includes(only)) continue
    const read = readCorner(await startingLayout(id))
    if (!read.ok) throw new Error(`${id} cannot be read`)
    const corner = read.value
    if (isWholeAxle(corner.layout)) {
      console.log(`${id}: a whole axle; lengths, heights and readings at ride height only`)
      continue
    }
    let [drawn, within] = [0, 0]
    for (const adjuster of adjustersOf(corner)) {
      const c = fitCoverage(corner, adjuster, { vehicles, seed: 20261125 })
      drawn += c.vehicles
      within += c.inside
      sharp += c.sharp
      named += c.named
      console.log(
        `${id}, ${adjuster.name}: ${degrees(c.effect)} ± ${degrees(c.before)} before, ± ${degrees(c.stated)} after twelve (rms ${degrees(c.rms)}); inside 95 %: ${percent(c.inside, c.vehicles)}; ≤ 0.05°: ${percent(c.sharp, c.vehicles)}, else named: ${percent(c.named, Math.max(1, c.vehicles - c.sharp))}; false gross errors ${percent(c.falseGross, c.vehicles)}; fit ${c.ms.toFixed(1)} ms (95 %: ${c.slowMs.toFixed(1)})`,
      )
      console.log(`     ${c.measured.join('; ')}`)
    }
    const share = within / drawn
    const held = share >= 0.93 && share <= 0.97
    if (!held) code = 1
    all += drawn
    inside += within
    console.log(`${held ? 'ok  ' : 'MISS'} ${id}: inside 95 %: ${percent(within, drawn)}`)
  }
  console.log(
    `All: inside 95 %: ${percent(inside, all)}; within 0.05°: ${percent(sharp, all)}; a measurement named for ${percent(named, Math.max(1, all - sharp))} of the rest`,
  )
  return code
}
