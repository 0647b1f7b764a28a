/**
 * The form of a verb that goes with what a joint or part is called: "wheel nuts are", "upper nut of the damper is".
 *
 * @source definition
 * @example agrees('left wheel nuts', 'is', 'are') // are
 * @example agrees('lower bolt of the springs', 'was', 'were') // was
 */
export const agrees = <One extends string, Many extends string>(
  called: string,
  one: One,
  many: Many,
): One | Many => (/[^s]s$/.test(called.split(/ of | to | at /, 1)[0]!) ? many : one)
