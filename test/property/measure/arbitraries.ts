import fc from 'fast-check'
import {
  arcsine,
  combine,
  type Measured,
  normal,
  rectangular,
  repeats,
  triangular,
} from '../../../src/measure/index.ts'

export const size = fc.double({ min: 0.01, max: 10, noNaN: true })
export const place = fc.double({ min: -10, max: 10, noNaN: true })
/** Repeats with at least five degrees of freedom, so that drawn variances settle. */
const meanOfRepeats = fc
  .array(place, { minLength: 6, maxLength: 9 })
  .map((values) => repeats([...values, values[0]! + 1], 'repeats'))

/** A value of one to five errors of any shape. Sources carry the prefix. */
export const anyMeasured = (prefix: string): fc.Arbitrary<Measured> =>
  fc
    .tuple(
      place,
      fc.array(fc.tuple(fc.constantFrom(rectangular, triangular, arcsine, normal), size), {
        minLength: 1,
        maxLength: 4,
      }),
      fc.option(meanOfRepeats, { nil: undefined }),
    )
    .map(([value, errors, mean]) =>
      combine([
        { of: { value, parts: [] }, times: 1 },
        ...errors.map(([shape, a], i) => ({ of: shape(a, `${prefix}${i}`), times: 1 })),
        ...(mean
          ? [
              {
                of: { value: mean.value, parts: mean.parts.map((p) => ({ ...p, source: `${prefix}r` })) },
                times: 1,
              },
            ]
          : []),
      ]),
    )

const hundredths = fc.integer({ min: -1000, max: 1000 }).map((n) => n / 100)

/** Values that share some errors: normal and box sources from a pool of four. */
export const sharing = (count: number): fc.Arbitrary<Measured[]> =>
  fc.array(
    fc
      .tuple(
        place,
        fc.array(fc.tuple(fc.integer({ min: 0, max: 3 }), hundredths), { minLength: 1, maxLength: 4 }),
      )
      .map(([value, errors]) =>
        combine(
          errors.map(([i, factor]) => ({
            of: i < 2 ? normal(1, `shared ${i}`) : rectangular(1, `shared ${i}`),
            times: factor,
          })),
          value,
        ),
      ),
    { minLength: count, maxLength: count },
  )
