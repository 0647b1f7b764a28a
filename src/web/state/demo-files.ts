import type { ReadFile } from './library.ts'

const places: Readonly<Record<string, string>> = import.meta.glob('../../../examples/**/*.json', {
  eager: true,
  query: '?read',
  import: 'default',
})

/** Every file that comes with the page, as it was read when the page was built: data beside the scripts, not in them. */
export const demoFiles = (): Promise<readonly ReadFile[]> =>
  Promise.all(
    Object.entries(places).map(async ([path, place]): Promise<ReadFile> => {
      const answer = await fetch(place)
      if (!answer.ok) throw new Error(`${path} cannot be loaded (${answer.status}).`)
      return answer.json()
    }),
  )
