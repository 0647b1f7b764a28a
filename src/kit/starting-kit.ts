import type { KitFile } from './kit-schema.ts'

/**
 * A kit to start from: what most workshops have, with errors that are usual for its kind. Nothing in it is calibrated, and
 * no floor is measured: both are the workshop's own to say.
 *
 * @source common practice, no source
 * @example startingKit.id // 'typical-kit'
 */
export const startingKit: KitFile = {
  format: 1,
  kind: 'kit',
  id: 'typical-kit',
  name: 'A kit to start from',
  source: 'typical, not measured: say under Kit what you have',
  wrenches: {
    'long-wrench': {
      name: 'long clicking wrench',
      kind: 'clicking',
      range: ['60 N·m', '320 N·m'],
      resolution: '1 N·m',
      accuracy: '4 %',
      lever: '560 mm',
      drive: '1/2 in',
    },
    'short-wrench': {
      name: 'short clicking wrench',
      kind: 'clicking',
      range: ['10 N·m', '100 N·m'],
      resolution: '0.5 N·m',
      accuracy: '4 %',
      lever: '360 mm',
      drive: '3/8 in',
    },
  },
  gauges: {
    inclinometer: {
      name: 'digital angle finder on the rim',
      kind: 'inclinometer',
      resolution: '0.1°',
      placing: '0.1°',
      accuracy: '0.1°',
      zeroError: '0.1°',
      zeroing: 'by reversal',
    },
    strings: {
      name: 'two strings on stands',
      kind: 'strings',
      spacing: '1 mm',
      length: '4.2 m',
      squareness: '0.2°',
    },
    rule: {
      name: 'steel rule',
      kind: 'rule',
      resolution: '0.5 mm',
      placing: '0.25 mm',
      zeroError: '0.1 mm',
    },
    tape: {
      name: 'steel tape',
      kind: 'tape',
      resolution: '1 mm',
      placing: '0.5 mm',
      accuracy: '0.05 %',
    },
    'turn-plates': {
      name: 'turn plates',
      kind: 'turn plates',
      resolution: '0.5°',
      placing: '0.25°',
      accuracy: '1 %',
      zeroError: '0.5°',
    },
  },
  supports: {
    jack: { name: 'trolley jack', kind: 'jack' },
    stands: { name: 'four axle stands', kind: 'stand' },
    'slip-plates': { name: 'slip plates', kind: 'slip plate' },
  },
}
