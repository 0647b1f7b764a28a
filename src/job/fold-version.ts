/**
 * Version of the rules by which a log becomes a state. A sign-off names it: the same log and version give the same state.
 * It grows whenever `foldJob` gives another state for a log that it could read before.
 *
 * @source definition
 */
export const foldVersion = 1
