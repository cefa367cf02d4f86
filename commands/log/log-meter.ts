// The correction for a flight controller's count of mAh, from the charges that put them back.

import { optional, required, service } from '../../src/assistant/command.ts'
import { packNameKind } from '../../src/assistant/kit/kit-name.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { meterCorrection } from '../../src/charging/upkeep/flight-meter.ts'
import { scaleKind } from '../../src/language/kinds/scale-kind.ts'
import type { NotedCharge } from '../../src/memory/charge-log.ts'
import { loggedPack } from './logged-pack.ts'

const fewFlights = 5

export const logMeter = service({
  name: 'log meter',
  takes: { name: required(packNameKind), scale: optional(scaleKind) },
  examples: ['log meter name: wren scale: 400', 'log meter name: wren'],
  /** Without a correction where no flight was counted. */
  run: async ({ name, scale }, context) => {
    const { charges } = await loggedPack(name, context)
    const flights = charges.flatMap(flightOf).slice(-fewFlights)
    return { flights, correction: meterCorrection(flights, scale) }
  },
  figures: ({ correction }) => {
    if (!correction) return []
    const { ratio, band, scale } = correction
    return [
      figure.factor('ratio', ratio, band),
      figure.percent('reads', 1 / ratio),
      figure.factor('scaleRaising', scale?.raising),
      figure.factor('scaleLowering', scale?.lowering),
    ]
  },
})

const flightOf = ({ charge_Ah, counted_Ah }: NotedCharge) =>
  counted_Ah === undefined ? [] : [{ counted_Ah, putBack_Ah: charge_Ah }]
