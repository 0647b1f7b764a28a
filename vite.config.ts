import { join } from 'node:path'
import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

const root = import.meta.dirname

export default defineConfig({
  root: join(root, 'src', 'web'),
  base: './',
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    outDir: join(root, 'dist', 'web'),
    emptyOutDir: true,
    target: 'es2022',
    // Nothing inline: the page may load from its own address and from nowhere else.
    assetsInlineLimit: 0,
  },
})
