// Which cutoff and current to set for a pack, on this charger and this source.

import { command } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { timedCharge } from '../../src/charging/setting/timed-charge.ts'
import { chargeTold, ofCharge } from '../shared/charging.ts'

export const current = command({
  name: 'current',
  takes: ofCharge,
  examples: [
    'current pack: 3S 720 LiHV charger: 0.5/1/2/4A',
    'current pack: 2S 2600 Li-ion charger: 1/2/3/5A source: PD 45W',
    'current pack: 6S 1300 LiPo source: 12V 10A temperature: 8°C',
  ],
  situation: chargeTold,
  compute: permit => {
    const { setting, time_s, carried } = timedCharge(permit)
    return { ...setting, longest_s: time_s.high, carried }
  },
  planned: ({ current_A, input_A, longest_s, carried }) => ({ set_A: current_A, input_A, takes_s: longest_s, carried }),
  figures: setting => [
    figure.current('setCurrent', setting.current_A),
    figure.perCell('cutoffPerCell', setting.cutoff.perCell_V),
    figure.voltage('cutoffPack', setting.cutoffPack_V),
    figure.rate('cRate', setting.rate_C),
    figure.current('wantedCurrent', setting.wanted_A),
    figure.current('highestCurrent', setting.limits[0].value_A),
    figure.power('inputPower', setting.input_W),
    figure.current('inputCurrent', setting.input_A),
  ],
})
