// What the plugs of packs bear.

import type { Band } from '../things/chemistry.ts'
import { practice } from '../things/cited.ts'

const band = (low: number, high = low): Band => ({ low, high })

/** In A: for as long as somebody likes, and for minutes. */
export const plugs_A = practice(
  {
    JST: band(3),
    XT30: band(15, 30),
    EC2: band(15, 30),
    XT60: band(30, 60),
    EC3: band(30, 60),
    Deans: band(30, 60),
    XT90: band(60, 90),
    EC5: band(60, 90),
  },
  'makers rate plugs so, for long loads and for minutes',
)

export type PlugName = keyof typeof plugs_A.value
export const plugNames = Object.keys(plugs_A.value) as [PlugName, ...PlugName[]]

/** Of plugs in a row, the one that bears least for long. */
export const weakestOf = (plugs: readonly PlugName[]): PlugName | undefined =>
  plugs.toSorted((a, b) => plugs_A.value[a].low - plugs_A.value[b].low)[0]
