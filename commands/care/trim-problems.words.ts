// What is said where what a charger showed, or what a meter said, is missing.

import { type Said, told } from '../../src/ground/locale.ts'

export const bothReadings: Said = ({ say }) => say`I need both what the charger shows and what the meter says.`
export const bothOptions: Said = ({ say, own }) => say`${own('shown:')} and ${own('measured:')} in volts`

export const voltsWanted = told(({ say }, name: 'shown' | 'measured') =>
  name === 'shown' ? say`I need what the charger shows in volts.` : say`I need what the meter says in volts.`,
)

export const voltsOfCellOrPack: Said = ({ say }) => say`volts per cell, or pack volts where the pack is named`
