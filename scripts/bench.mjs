// `npm run bench`: set up, then time what the targets speak of, against its rivals, in one run.
// `npm run bench -- sop [FOLDER [SECONDS]]`: order the instances of a folder, beside a general mixed-integer solver.
// `npm run bench -- plan`: plan two-sided jobs and judge an edited line.
// `npm run bench -- fit [VEHICLES [LAYOUT]]`: fit drawn vehicles and judge what the fit foresees.
// `npm run bench -- record`: a job of 5,000 entries verified, appended to, opened.
// `npm run bench -- store`: the same job in a folder and in a browser, opened with and without its checkpoint.
// `npm run bench -- paper`: the demo's proof sheet as a page and as a PDF.
// `npm run bench -- web`: what the page takes: scripts, first sheet, longest task, a long job opened; also slowed down.
// `npm run bench -- findings [N [SEED]]`: simulated faults held against the findings.
import { setUp } from './set-up.mjs'

await setUp()
const { register } = await import('tsx/esm/api')
register()
if (process.argv[2] === 'sop') {
  const { sopBench } = await import('../bench/sop.ts')
  process.exitCode = await sopBench(process.argv[3], Number(process.argv[4] ?? 60))
} else if (process.argv[2] === 'plan') {
  const { planBench } = await import('../bench/plan.ts')
  process.exitCode = planBench()
} else if (process.argv[2] === 'fit') {
  const { fitBench } = await import('../bench/fit.ts')
  process.exitCode = await fitBench(Number(process.argv[3] ?? 2000), process.argv[4])
} else if (process.argv[2] === 'findings') {
  const { findingsBench } = await import('../bench/findings.ts')
  process.exitCode = findingsBench(Number(process.argv[3] ?? 2000), Number(process.argv[4] ?? 1))
} else if (process.argv[2] === 'record') {
  const { recordBench } = await import('../bench/record.ts')
  process.exitCode = await recordBench()
} else if (process.argv[2] === 'store') {
  const { storeBench } = await import('../bench/store.ts')
  process.exitCode = await storeBench()
} else if (process.argv[2] === 'web') {
  const { webBench } = await import('../bench/web.ts')
  process.exitCode = await webBench()
} else if (process.argv[2] === 'paper') {
  const { paperBench } = await import('../bench/paper.ts')
  process.exitCode = await paperBench()
} else {
  const { bench } = await import('../bench/run.ts')
  const { buildPage } = await import('./build-page.mjs')
  process.exitCode = await bench({ page: buildPage })
}
