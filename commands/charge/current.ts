// Which cutoff and current to set for a pack, on this charger and this source.

import { command, optional } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { settingAsAsked } from '../../src/charging/setting/setting.ts'
import { plannedOf, timedCharge } from '../../src/charging/setting/timed-charge.ts'
import { currentKind } from '../../src/language/kinds/values.ts'
import { byLog, recallFromLog } from '../log/log-recall.ts'
import { chargeTold, currentOn, ofCharge, stopFigures } from '../shared/charging.ts'
import { ofLead } from '../shared/own-lead.ts'

export const current = command({
  name: 'current',
  shelf: 'charge current',
  takes: { ...ofCharge, ...ofLead, current: optional(currentKind), ...byLog },

  examples: [
    'current pack: 3S 720 LiHV charger: 0.3/0.8/1.5/3A',
    'current pack: 2S 2600 Li-ion charger: 0.3/0.8/1.5/3A source: PD 45W',
    'current pack: 6S 1300 LiPo source: 12V 10A temperature: 8°C',
  ],
  recall: recallFromLog,
  situation: asked =>
    chargeTold({
      ...asked,
      current: asked.current === undefined ? undefined : currentOn(asked.charger, asked.current),
    }),
  compute: permit => {
    const { current_A } = permit.situation
    const asked = current_A === undefined ? undefined : settingAsAsked(permit, current_A)
    const timed = timedCharge(permit, { current_A: asked?.current_A })
    return { ...timed, ...(asked ?? timed.setting) }
  },
  planned: setting => ({ ...plannedOf(setting), carried: setting.carried }),
  figures: setting => [
    figure.current('setCurrent', setting.current_A),
    figure.perCell('cutoffPerCell', setting.cutoff.perCell_V),
    figure.voltage('cutoffPack', setting.cutoffPack_V),
    figure.rate('cRate', setting.rate_C),
    figure.current('wantedCurrent', setting.wanted_A),
    figure.current('highestCurrent', setting.limits[0].value_A),
    setting.askable.value_A > setting.limits[0].value_A && setting.askable.kind === 'label'
      ? figure.current('labelCurrent', setting.askable.value_A)
      : undefined,
    figure.power('inputPower', setting.input_W),
    figure.current('inputCurrent', setting.input_A),
    ...stopFigures(setting),
  ],
})
