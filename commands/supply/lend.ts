// A flight pack as the supply of a phone or another device through a converter.

import { command, optional, required } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { lend as lendOut } from '../../src/charging/sources/lend.ts'
import {
  energyKind,
  packKind,
  percentKind,
  powerKind,
  stateKind,
  temperatureKind,
} from '../../src/language/kinds/values.ts'
import { uselessConverter } from './supply-problems.words.ts'

/** No converter passes on less of its input. */
const leastEfficiency = 0.3

export const lend = command({
  name: 'lend',
  shelf: 'supply lend',
  takes: {
    pack: required(packKind),
    power: required(powerKind),
    from: optional(stateKind),
    device: optional(energyKind),
    efficiency: optional(percentKind),
    temperature: optional(temperatureKind),
  },
  examples: [
    'lend pack: 4S 1500 LiPo power: 10W device: 19Wh',
    'lend pack: 6S 1300 LiPo from: 3.85V per cell power: 20W efficiency: 90%',
    'lend pack: 2S 5000 Li-ion from: 80% power: 5W',
  ],
  situation: ({ pack, from, temperature }) => ({ act: 'drain', pack, from, temperature_C: temperature }),
  compute: (permit, { power, device, efficiency }) => {
    if (efficiency !== undefined && efficiency < leastEfficiency) throw uselessConverter(efficiency)
    return { ...lendOut(permit, { power_W: power, device_Wh: device, efficiency }), permit }
  },
  planned: ({ current_A, duration_s }) => ({ set_A: current_A, takes_s: duration_s, lasts_s: duration_s }),
  figures: lent => [
    figure.energy('energyGiven', lent.given_Wh),
    figure.duration('lendTime', lent.duration_s),
    figure.voltage('stopVoltage', lent.stop_V),
    figure.perCell('stopPerCell', lent.stopPerCell_V),
    figure.perCell('stopAtRest', lent.restStopPerCell_V),
    figure.current('current', lent.current_A),
    figure.percent('chargeLeft', lent.leftSoc),
    figure.power('mostPower', lent.most_W),
    figure.percent('deviceCharge', lent.fills),
  ],
})
