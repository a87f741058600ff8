import { actionBass } from './action-bass.ts';
import { actionTreble } from './action-treble.ts';
import { boardEdge } from './board-edge.ts';
import { bracesClear } from './braces-clear.ts';
import { breakAngle } from './break-angle.ts';
import { capClear } from './cap-clear.ts';
import { capEdge } from './cap-edge.ts';
import { capGrain } from './cap-grain.ts';
import type { Check } from './check.ts';
import { crownRadius } from './crown-radius.ts';
import { exposure } from './exposure.ts';
import { firstFret } from './first-fret.ts';
import { frets } from './frets.ts';
import { frontWall } from './front-wall.ts';
import { inSlot } from './in-slot.ts';
import { intonation } from './intonation.ts';
import { keptHoles } from './kept-holes.ts';
import { neck } from './neck.ts';
import { neckPlane } from './neck-plane.ts';
import { pinEdge } from './pin-edge.ts';
import { pinFan } from './pin-fan.ts';
import { pinGap } from './pin-gap.ts';
import { pinWood } from './pin-wood.ts';
import { pinsMeetHoles } from './pins-meet-holes.ts';
import { plateCap } from './plate-cap.ts';
import { reaming } from './reaming.ts';
import { registerPins } from './register-pins.ts';
import { relief } from './relief.ts';
import { rise } from './rise.ts';
import { saddleEnd } from './saddle-end.ts';
import { saddleThickness } from './saddle-thickness.ts';
import { scale } from './scale.ts';
import { scar } from './scar.ts';
import { setback } from './setback.ts';
import { straightedge } from './straightedge.ts';
import { tension } from './tension.ts';
import { thickness } from './thickness.ts';
import { tip } from './tip.ts';
import { topRise } from './top-rise.ts';
import { woodUnderSlot } from './wood-under-slot.ts';

/** Every check, in the order in which equally grave findings are told. A new one is a file beside this one, a line here and its range. */
export const checks: readonly Check[] = [
  straightedge,
  neck,
  exposure,
  inSlot,
  woodUnderSlot,
  frontWall,
  pinWood,
  reaming,
  pinGap,
  pinEdge,
  breakAngle,
  thickness,
  tip,
  actionBass,
  actionTreble,
  firstFret,
  relief,
  rise,
  setback,
  intonation,
  saddleThickness,
  saddleEnd,
  boardEdge,
  pinFan,
  tension,
  crownRadius,
  scar,
  keptHoles,
  pinsMeetHoles,
  bracesClear,
  topRise,
  registerPins,
  plateCap,
  capEdge,
  capGrain,
  capClear,
  frets,
  scale,
  neckPlane,
];
