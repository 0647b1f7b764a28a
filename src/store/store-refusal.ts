/** Why a store says no. @source definition */
export type StoreRefusal =
  | 'no-job'
  | 'no-folder'
  | 'spoilt'
  | 'other-job'
  | 'not-sealed'
  | 'lacks-before'
  | 'busy'
  | 'no-room'
  | 'read-only'
  | 'unreadable'
  | 'there-already'
  | 'newer'
