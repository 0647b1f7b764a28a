import { readFileSync } from 'node:fs'
import { basename, dirname, join, resolve } from 'node:path'
import { isDeepStrictEqual } from 'node:util'
import react from '@vitejs/plugin-react'
import { defineConfig, type Plugin } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'
import { readAny } from './src/job/index.ts'

const root = import.meta.dirname

// A room only gives what is asked of its door: what one chunk alone needs of it goes into that chunk.
const treeshake = { moduleSideEffects: [{ test: /[\\/]src[\\/](?!web[\\/])/, sideEffects: false }] }

/**
 * The schemas' way out to JSON Schema, which only `npm run generate` takes: in the worker it would be one part in
 * twenty of its script, and nobody could reach it.
 */
const withoutJsonSchema = (): Plugin => {
  const stubs: readonly (readonly [RegExp, string])[] = [
    [
      /zod[\\/]v4[\\/]core[\\/]to-json-schema\.js$/,
      `const none = () => () => { throw new Error('No JSON Schema is made here.') }
       export { none as createStandardJSONSchemaMethod, none as createToJSONSchemaMethod, none as extractDefs,
         none as finalize, none as handleUnrepresentable, none as initializeContext, none as processSchema }`,
    ],
    [
      /zod[\\/]v4[\\/]core[\\/]json-schema-processors\.js$/,
      'export const aggregateChecks = () => ({}), allProcessors = {}, toJSONSchema = null',
    ],
    [/zod[\\/]v4[\\/]core[\\/]json-schema-generator\.js$/, 'export class JSONSchemaGenerator {}'],
  ]
  return {
    name: 'without-json-schema',
    enforce: 'pre',
    load: (id) => stubs.find(([file]) => file.test(id))?.[1],
  }
}

/**
 * `….json?read`: the address of a file of a format as it was read when the page was built, so that the worker need not
 * bring along everything that reads files.
 */
const readWhenBuilt = (): Plugin => {
  const mark = '\0read:'
  return {
    name: 'read-when-built',
    enforce: 'pre',
    resolveId: (source, importer) =>
      source.endsWith('.json?read') && importer
        ? `${mark}${resolve(dirname(importer), source.slice(0, -'?read'.length))}.js`
        : undefined,
    load(id) {
      if (!id.startsWith(mark)) return
      const path = id.slice(mark.length, -'.js'.length)
      const name = basename(path)
      const read = readAny({ name, text: readFileSync(path, 'utf8') })
      if (!read.ok) throw new Error(`${path}, ${read.problems[0]!.field}: ${read.problems[0]!.wrong}`)
      const source = JSON.stringify({ name, ...read.value })
      if (!isDeepStrictEqual(JSON.parse(source), { name, ...read.value }))
        throw new Error(`${path} holds what JSON cannot carry.`)
      return `export default import.meta.ROLLUP_FILE_URL_${this.emitFile({ type: 'asset', name, source })}`
    },
  }
}

const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))

export default defineConfig({
  define: { __ENGINE__: JSON.stringify(version) },
  root: join(root, 'src', 'web'),
  base: './',
  plugins: [
    react(),
    VitePWA({
      // A newer page waits until the person takes it: nothing changes under the hand.
      registerType: 'prompt',
      injectRegister: false,
      includeAssets: ['mark.svg'],
      workbox: {
        globPatterns: ['**/*.{js,css,html,woff2,ttf,json,svg}'],
        maximumFileSizeToCacheInBytes: 4_000_000,
      },
      manifest: {
        name: 'Axlewright',
        short_name: 'Axlewright',
        description: 'The steering and suspension technician’s working sheet',
        display: 'standalone',
        background_color: '#f7f4ec',
        theme_color: '#f7f4ec',
        icons: [{ src: 'mark.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
    }),
  ],
  worker: {
    format: 'es',
    plugins: () => [withoutJsonSchema(), readWhenBuilt()],
    rolldownOptions: { treeshake, checks: { importIsUndefined: false }, output: { comments: false } },
  },
  build: {
    outDir: join(root, 'dist', 'web'),
    emptyOutDir: true,
    target: 'es2022',
    // Nothing inline: the page may load from its own address and from nowhere else.
    assetsInlineLimit: 0,
    // There are two chunks: what would be loaded ahead is loaded at once.
    modulePreload: false,
    rolldownOptions: { treeshake, output: { comments: false } },
  },
})
