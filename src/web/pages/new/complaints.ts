/** What owners say, in few words; each is one touch. Common practice, no source. */
export const complaints: readonly string[] = [
  'pulls to one side',
  'wanders',
  'knocks',
  'steering wheel off centre',
  'steers heavily',
  'play in the steering',
  'shakes',
  'tyre worn on one side',
  'sits low',
  'hit a kerb or a hole',
  'failed inspection',
  'new parts to fit',
]
