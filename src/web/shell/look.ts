/** How the paper looks; `system` follows the device. */
export type Look = 'system' | 'day' | 'night' | 'contrast'

/** Every look with the word for it. */
export const looks: readonly (readonly [Look, string])[] = [
  ['system', 'As the device'],
  ['day', 'Day'],
  ['night', 'Night'],
  ['contrast', 'Sun glare'],
]

const place = 'axlewright/look'

/** The look chosen by hand on this device. */
export function keptLook(): Look {
  try {
    const text = localStorage.getItem(place)
    return looks.find(([look]) => look === text)?.[0] ?? 'system'
  } catch {
    return 'system'
  }
}

/** Shows a look; the style sheet does the rest. */
export function applyLook(look: Look): void {
  if (look === 'system') document.documentElement.removeAttribute('data-look')
  else document.documentElement.dataset['look'] = look
}

/** Shows a look and keeps it on this device. */
export function chooseLook(look: Look): void {
  applyLook(look)
  try {
    localStorage.setItem(place, look)
  } catch {
    // A browser that keeps nothing still shows the look until it is closed.
  }
}
