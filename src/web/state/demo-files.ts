/** The text of every file that comes with the page, by path. */
export const demoFiles: Readonly<Record<string, string>> = import.meta.glob('../../../examples/**/*.json', {
  eager: true,
  query: '?raw',
  import: 'default',
})
