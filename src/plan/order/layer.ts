/** States of one place that are kept: what is done (bits), which action was last, at what cost. */
export interface Layer {
  readonly count: number
  readonly done: Uint32Array
  readonly last: Uint16Array
  readonly cost: Float64Array
  /** Prices of what is done. */
  readonly paid: Float64Array
  readonly bound: Float64Array
  /** Which state of the layer before it came from. */
  readonly parent: Int32Array
}

/** A layer with nothing done. */
export function emptyLayer(words: number, bound: number): Layer {
  return {
    count: 1,
    done: new Uint32Array(words),
    last: new Uint16Array(1),
    cost: new Float64Array(1),
    paid: new Float64Array(1),
    bound: Float64Array.of(bound),
    parent: new Int32Array(1),
  }
}
