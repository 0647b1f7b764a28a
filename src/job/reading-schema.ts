import * as z from 'zod'

/** Placeholder until the gauge room's observations stand. */
export const readingData = z.strictObject({ method: z.string() })
