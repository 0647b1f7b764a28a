/** Why no order can be sought, and no critical path found. @source definition */
export type OrderRefusal = 'circle' | 'not-a-cost' | 'wrong-size' | 'no-such-action' | 'not-a-time' | 'twice'
