// The state of charge of a cell as a figure, with the span of real cells.

import type { Figure } from '../../src/assistant/reply.ts'
import type { Band } from '../../src/charging/simulation/charge.ts'
import type { Show } from '../../src/ground/show.ts'

export const spanOf = ({ low, high }: Band, show: Show): string =>
  `${show.percent(low)} to ${show.percent(high)}`

export function chargeFigure(
  label: string,
  { soc, band }: { readonly soc: number; readonly band: Band },
  show: Show,
): Figure {
  return {
    key: 'soc',
    label,
    value: soc * 100,
    unit: '%',
    low: band.low * 100,
    high: band.high * 100,
    text: `${show.percent(soc)} (${spanOf(band, show)})`,
  }
}
