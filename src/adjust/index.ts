export type {
  Adjuster,
  AdjustRefusal,
  Eccentric,
  Looks,
  ShimPack,
  SlottedBolt,
  TieRodThread,
  View,
} from './adjuster.ts'
