import type { Units } from '../../state/messages.ts'

/** What a text of each kind looks like, as this person's trade writes it. */
export const examples: Readonly<
  Record<Units, Readonly<Record<'mileage' | 'pressure' | 'rear' | 'depth' | 'height' | 'after', string>>>
> = {
  metric: {
    mileage: '148 200 km',
    pressure: '325 kPa',
    rear: '400 kPa',
    depth: '5 mm',
    height: '441 mm',
    after: '50 km',
  },
  US: {
    mileage: '92 000 mi',
    pressure: '47 psi',
    rear: '58 psi',
    depth: '6/32 in',
    height: '17 3/8 in',
    after: '30 mi',
  },
}
