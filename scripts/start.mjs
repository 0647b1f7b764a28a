// `npm start`: set up, build the page when it changed, serve it to this machine, print its address.
import { createServer } from 'node:http'
import { setUp } from './set-up.mjs'

const usualPort = 4127

/** The port asked for by --port or PORT; null when none was. */
function portAsked() {
  const args = process.argv.slice(2)
  const at = args.findIndex((arg) => arg === '--port' || arg.startsWith('--port='))
  const text =
    at < 0 ? process.env.PORT : args[at].includes('=') ? args[at].slice('--port='.length) : args[at + 1]
  if (text === undefined || text === '') return null
  const port = Number(text)
  if (Number.isInteger(port) && port >= 0 && port <= 65535) return port
  console.error(`"${text}" is not a port. Give a whole number from 0 (any free one) to 65535.`)
  process.exit(2)
}

const security = {
  'Content-Security-Policy':
    "default-src 'self'; img-src 'self' blob:; object-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
}

const listen = (server, port) =>
  new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, '127.0.0.1', () => {
      server.off('error', reject)
      resolve(server.address().port)
    })
  })

const asked = portAsked()
await setUp()
const { buildPage } = await import('./build-page.mjs')
let pageFolder
try {
  pageFolder = buildPage()
} catch (error) {
  console.error(error.message)
  process.exit(2)
}
const { default: sirv } = await import('sirv')
const files = sirv(pageFolder, {
  etag: true,
  setHeaders: (response, path) => {
    for (const [name, value] of Object.entries(security)) response.setHeader(name, value)
    response.setHeader(
      'Cache-Control',
      path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
    )
  },
})
const server = createServer((request, response) =>
  files(request, response, () => {
    response.writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8', ...security })
    response.end('There is no such page here. Open the address without anything behind it.\n')
  }),
)

const end = () => {
  server.close(() => process.exit(0))
  server.closeAllConnections()
  setTimeout(() => process.exit(0), 500)
}
process.on('SIGTERM', end)
process.on('SIGINT', end)
process.on('SIGHUP', end)
// npm hands a signal to its shell, and not every shell hands it on: when the parent is gone, so are we.
const parent = process.ppid
if (process.env.npm_lifecycle_event)
  setInterval(() => {
    if (process.ppid !== parent) end()
  }, 200).unref()

let port
try {
  port = await listen(server, asked ?? usualPort)
} catch (error) {
  if (error.code !== 'EADDRINUSE' || asked !== null) {
    console.error(
      `Port ${asked ?? usualPort} cannot be used (${error.code}). Give another one with --port, or 0 for any free one.`,
    )
    process.exit(2)
  }
  port = await listen(server, 0)
}
console.log(`Axlewright: http://127.0.0.1:${port}/`)
