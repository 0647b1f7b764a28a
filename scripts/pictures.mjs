// `npm run pictures`: pictures of every sheet, on phone, tablet and desktop, by day and by night, in test-output/pictures.
import { spawn } from 'node:child_process'
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { browserFlags, findBrowser } from './browser.mjs'
import { root, setUp } from './set-up.mjs'

await setUp()
const { chromium } = await import('playwright-core')

const folder = join(root, 'test-output', 'pictures')
const sizes = [
  ['phone', 390, 844],
  ['tablet', 820, 1180],
  ['desktop', 1440, 900],
]
const looks = [
  ['day', 'light'],
  ['night', 'dark'],
]
const demo = 'port-unit-07'
/** Name, place in the address, and what is seen when it is there; `job` stands for the number of the new job. */
const sheets = [
  ['jobs', 'jobs', '.job-row'],
  ['new-job', 'new', '.layouts'],
  ['kit', 'kit', '.kit-row'],
  ['workshop', 'workshop', '.workshop-facts'],
  ['check-a-proof', 'verify', 'h1'],
  ['values', 'values/job/angles', '.file-row'],
  ['new-findings', 'job/findings', 'main li'],
  ['new-angles', 'job/angles', '.round, .next'],
  ['new-strip', 'job/strip', '.bolts'],
  ['arrival', `${demo}/arrival`, 'main section'],
  ['findings', `${demo}/findings`, 'main li'],
  ['plan', `${demo}/plan`, 'main section'],
  ['strip', `${demo}/strip`, '.bolts'],
  ['refit', `${demo}/refit`, '.bolts'],
  ['angles', `${demo}/angles`, '.reading'],
  ['handover', `${demo}/handover`, 'main section'],
]

/** Opens a job as a person would: from a complaint and a layout. */
async function newJob(page, address) {
  await page.goto(`${address}#/new`)
  await page.getByRole('button', { name: 'pulls to one side' }).click()
  await page.getByLabel('Vehicle').fill('unit 21, small van')
  await page.getByRole('button', { name: /^Strut/ }).click()
  await page.getByLabel('What is the workshop called?').fill('Harbour yard')
  await page.getByLabel('Your initials').fill('KB')
  await page.getByRole('button', { name: 'Open the job' }).click()
  await page.getByRole('button', { name: 'It is on paper' }).click()
  await page.waitForURL(/findings/)
  return /#\/([^/]+)/.exec(page.url())[1]
}

/** Lets the workers answer and the drawings find their width. */
const settled = async (page, shows) => {
  const seen = await page
    .locator(shows)
    .filter({ visible: true })
    .first()
    .waitFor({ timeout: 30_000 })
    .then(
      () => true,
      () => false,
    )
  await page.evaluate(() => document.fonts.ready)
  await page.waitForTimeout(700)
  return seen
}

/** Keeps one picture, and tells what a look at it may miss: a sheet that did not come, or that scrolls sideways. */
async function picture(page, name, isSeen) {
  const path = join(folder, `${name}.png`)
  await page.screenshot({ path, fullPage: true })
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
  const faults = [
    ...(isSeen ? [] : ['what it is about did not come']),
    ...(over > 0 ? [`scrolls sideways by ${over} px`] : []),
  ]
  console.log(faults.length > 0 ? `${path}  (${faults.join('; ')})` : path)
  return faults.length
}

const goTo = (page, place) =>
  page.evaluate((hash) => {
    location.hash = hash
  }, `#/${place}`)

async function inOneLook(browser, address, [size, width, height], [look, colorScheme]) {
  const context = await browser.newContext({
    viewport: { width, height },
    colorScheme,
    reducedMotion: 'reduce',
  })
  context.setDefaultTimeout(30_000)
  const page = await context.newPage()
  let faults = 0
  page.on('pageerror', (error) => {
    faults++
    console.error(error.message)
  })
  const job = await newJob(page, address)
  for (const [name, place, shows] of sheets) {
    await goTo(page, place.replace(/(^|\/)job(?=\/)/, `$1${job}`))
    faults += await picture(page, `${name}-${size}-${look}`, await settled(page, shows))
  }
  // A joint's own screen, from the list that it stands in.
  await goTo(page, `${demo}/refit`)
  await page.locator('.bolts a:visible').first().click()
  faults += await picture(page, `joint-${size}-${look}`, await settled(page, 'main h1, main h2'))
  await context.close()
  return faults
}

/** The page on any free port. */
const serve = () =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [join(root, 'scripts', 'start.mjs'), '--port', '0'], {
      stdio: ['ignore', 'pipe', 'inherit'],
    })
    child.stdout.on('data', (data) => {
      const address = /http:\/\/\S+/.exec(String(data))?.[0]
      if (address) resolve({ address, end: () => child.kill('SIGTERM') })
    })
    child.on('exit', (code) => reject(new Error(`The page ended with ${code} before it had an address.`)))
  })

mkdirSync(folder, { recursive: true })
const found = await findBrowser()
const served = await serve()
let browser
let faults = 0
try {
  browser = await chromium.launch({
    executablePath: found.path,
    args: [...browserFlags],
    env: { ...process.env, ...found.env },
  })
  for (const size of sizes)
    for (const look of looks) faults += await inOneLook(browser, served.address, size, look)
} finally {
  await browser?.close()
  served.end()
}
if (faults > 0) {
  console.error(`${faults} ${faults === 1 ? 'fault' : 'faults'}, told beside their pictures.`)
  process.exitCode = 1
}
