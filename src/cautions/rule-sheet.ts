// What holds for every charge in a club, for its rule sheet.

import { type Caution, generalCaution } from './cautions.ts'

export const ruleSheet: readonly [Caution, ...Caution[]] = [
  generalCaution,
  {
    key: 'soundOnly',
    text: 'Look at every pack and feel it first. One that is swollen, dented, punctured, leaking or hot is not charged: outdoors with it, and hand it in where batteries are taken back.',
  },
  {
    key: 'rightSetting',
    text: 'Check chemistry, cell count, cutoff and current against the label before you start, and connect the balance lead.',
  },
  {
    key: 'neverThere',
    text: 'Never charge in a moving vehicle, overnight, in the aircraft, or next to fuel, paper or other packs. Keep the way out free.',
  },
  {
    key: 'whenItFails',
    text: 'If a pack grows hot, swells or smells, stop the charge if that is safe. If it smokes, hisses or burns: everybody away from it and its smoke, and call the fire service.',
  },
  {
    key: 'storeThem',
    text: 'A pack that does not fly within two days goes to storage volts, and into something that cannot burn.',
  },
]
