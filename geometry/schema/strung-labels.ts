/** What the readings of the strung guitar are called: by themselves, as a message names them where no field is at hand. */
export const strungLabels = {
  thickness: 'Old bridge, thickness',
  exposure: 'Old saddle, exposure',
  actionBass: 'Action as it is, bass',
  actionTreble: 'Action as it is, treble',
  firstFretBass: 'First fret as it is, bass',
  firstFretTreble: 'First fret as it is, treble',
  relief: 'Relief as it is',
  light: 'Light over the old bridge',
} as const;
