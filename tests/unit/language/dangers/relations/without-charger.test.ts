// Whoever has no charger and asks another source to fill the pack would fill it with nothing that stops.

import { withoutCharger } from '../../../../../src/language/dangers/relations/without-charger.ts'
import { tells } from './tells.ts'

tells('no charger', withoutCharger, 'noCharger', [
  ['forgot my charger, can a psu fill a 3S', 'charger'],
  ['left the charger at home, charge my pack off the car battery', 'charger'],
  ['my charger is dead, can I connect it to a solar panel', 'charger'],
  ['no lipo charger here, put a 2S on a supply', 'charger'],
  ['the charger is dead, a psu of 16.8 V instead', 'charger'],
  ['the charger is dead, the psu is fine'],
  ['forgot my charger, a friend lends another charger, from a psu too, charge 3S'],
  ['left the charger on the psu, charge my 3S'],
  ['forgot my charger, which psu is good'],
  ['no charger lead, put a 2S on a supply'],
  ['forgot my charger, charge my 3S'],
  ['the charger is on a psu, charge my 3S'],
])
