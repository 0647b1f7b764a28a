// What is done to the joints of a wheel, as entries. T works, K looks a second time.
const calibrations = { 'long-wrench': '2025-11-18', 'short-wrench': '2025-11-18' }
/** Entries of one wheel's joints. */
export const joint = (wheel) => ({
  undone: (name, to = 'open', remark) => [
    'undone',
    { joint: name, wheel, to, ...(remark ? { remark } : {}), hand: 'T' },
    3,
  ],
  runUp: (name, more = {}) => ['tightened', { stage: 'run up', joint: name, wheel, ...more, hand: 'T' }, 2],
  stage: (name, number, torque, more = {}) => [
    'tightened',
    { stage: 'stage', number, joint: name, wheel, torque, ...wrenchFor(torque), ...more, hand: 'T' },
    2,
  ],
  final: (name, torque, more = {}) => [
    'tightened',
    {
      stage: 'final',
      joint: name,
      wheel,
      ...(torque ? { torque, ...wrenchFor(torque) } : {}),
      ...more,
      hand: 'T',
    },
    3,
  ],
  pinned: (name) => ['pinned', { joint: name, wheel, pin: 'new', legsBent: true, hand: 'T' }, 1],
  checked: (name, how = 'looked at and felt') => [
    'checked',
    { joint: name, wheel, by: 'another person', how, passed: true, hand: 'K' },
    2,
  ],
})
function wrenchFor(torque) {
  const wrench = Number.parseFloat(torque) > 60 ? 'long-wrench' : 'short-wrench'
  return { wrench, calibrated: calibrations[wrench] }
}
