// Who holds a current down, to complete "all that …".

import type { LimitKind } from '../../charging/setting/limit.ts'
import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'

export const limitHolders = ({ say }: Locale): Readonly<Record<LimitKind, Text>> => ({
  label: say`the label allows`,
  chemistry: say`the cells take`,
  house: say`the rules of this club allow`,
  temperature: say`this temperature allows`,
  condition: say`a pack in this state takes`,
  board: say`packs on one board take, of which one may come unplugged`,
  charger: say`the charger gives`,
  'charger power': say`the charger's power allows`,
  source: say`the source carries`,
})
