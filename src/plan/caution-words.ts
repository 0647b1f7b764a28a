/**
 * Cautions, each to be shown at the action it belongs to.
 *
 * @source common practice, no source
 */
export const cautionWords = {
  jackAlone:
    'A jack lifts, it does not carry: nobody under it, no wheel off, until the stands are seen loaded.',
  stands:
    'People die under vehicles that were not supported. Stands under the frame, on firm ground, and look at each.',
  lift: 'Look at every pad before it carries; lock the arms before anybody walks under it.',
  heavy: 'A heavy unit off a two-post lift shifts the balance: tail support first.',
  jackArm: 'Saddle located, coil tethered to the frame, body on its stands, nobody in line with the spring.',
  letDown: 'Lower it slowly, from the side. Look where the spring goes before the last of its load is off.',
  subFrame:
    'Before its last bolt: a table or jack under the sub-frame, strapped; whatever hangs on it held; it comes down slowly, nobody below.',
  compressor: 'Compressor of the right rating, hooks strapped, nobody in line, no impact tool.',
  torsionBar:
    'A wound torsion bar turns its arm with the weight of the vehicle: count the turns, nobody in line with the arm.',
  air: 'Levelling off first: the vehicle may rise or sink by itself. Deflated and disconnected, not one of the two.',
  leaf: 'A loaded leaf kicks when its bolt comes out: axle carried, spring hanging slack, hands beside it, not in line.',
  gas: 'Gas under pressure in the damper: never cut it, never heat it.',
  rideByJack:
    'The jack now carries nearly the whole corner and can lift the body off its stand: stand stays fitted, watch its gap, nobody under.',
  hose: 'The caliper hangs on a hook, never on its hose.',
  lead: 'Pull at the plug, never at the lead.',
  taper:
    'Nut on a few threads until the taper has let go. Press-type separator first; a fork costs the boot.',
  shock: 'No heat on a part that stays; no hammer on aluminium or on a joint that is used again.',
  heat: 'Penetrating oil burns: none near a flame; no flame near fuel, hose, undercoat, gas damper or bonded bush.',
  castle:
    'Low figure, then only forward to the next slot, never past the high figure, never back; then the new pin, legs bent.',
  hub: 'This hub has its own rule: seat it, then back off for end float. Never as a castle nut of a ball joint.',
  bonded: 'Tightened hanging, the rubber carries that twist for life and tears.',
  straight: 'Rubber in the rod end: tightened with the wheels turned, it steers by itself.',
  wheel: 'Faces clean, threads dry, right nut seats; opposite first, in two passes, the last on the ground.',
  singleUse: 'Used once: a new one.',
  dust: 'Lining dust: never blown off, never brushed dry.',
  fluid: 'Brake fluid takes paint off and draws water: plug the open ends at once.',
  pedal: 'Nothing rolls before the pedal is firm.',
  bearing: 'No weight on the wheel bearing before this nut is final.',
  shaft: 'A steering wheel that turns freely breaks the spiral contact behind the airbag: hold it.',
  airbag: 'Airbag: only by the maker’s own method and waiting time.',
  toe: 'Until toe is set: yard pace only.',
  undo: 'Never undo with the torque wrench.',
  oldThread: 'The new part’s nut may take another spanner.',
} as const
