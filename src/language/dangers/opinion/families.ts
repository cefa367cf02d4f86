// Dangers that are alike: one opinion each.

import type { Danger } from '../../../charging/situation/dangers.ts'

/** Of each family the first stands for it where nothing names another. */
export const families: readonly (readonly Danger[])[] = [
  ['fire', 'injury'],
  ['unattended', 'children', 'leftOnCharger', 'medical'],
  ['swollen', 'pierced', 'crashed', 'wet', 'unknownPack', 'overfull'],
  ['hotPack', 'hotPlace'],
  ['coldPack'],
  ['tooLow', 'revive', 'storedFull'],
  ['softBed', 'burnsNear', 'wayBlocked', 'sealedBox', 'loose'],
  ['movingVehicle', 'exhaust'],
  ['wrongMode', 'wrongCount', 'tooFast', 'errorIgnored', 'bypass'],
  ['noCharger', 'wrongCharger', 'drainsSource'],
  ['noBalance', 'badLead', 'crossedLeads', 'reversed', 'mainsWet', 'seriesCharge', 'boardMixed'],
  ['homework', 'folkRemedy', 'disposal', 'badTransport', 'propeller'],
]
