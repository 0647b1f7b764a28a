/**
 * Version of the rules by which a log becomes a state. A sign-off names it: the same log and version give the same state.
 * It grows whenever `foldJob` gives another state for a log that it could read before: also when a kind of entry or a
 * member is added, which an older version left aside. What each version gained stands in vocabulary-schema.ts.
 *
 * @source definition
 */
export const foldVersion = 2
