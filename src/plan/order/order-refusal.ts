/** Why no order can be sought. @source definition */
export type OrderRefusal =
  | 'circle'
  | 'not-a-cost'
  | 'wrong-size'
  | 'no-such-action'
  | 'not-a-time'
  | 'not-a-name'
