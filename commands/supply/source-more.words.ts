// How large a source must be, in words, and the picture of a battery that feeds a charger.

import { drainCurve } from '../../src/charging/simulation/drain-curve.ts'
import { drawsOf } from '../../src/charging/simulation/supply-run.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import { otherSpread, type SourcePlan } from '../../src/charging/sources/source-plan.ts'
import { leadAcidLimits } from '../../src/charging/things/lead-acid.ts'
import { chargerEfficiencies, efficienciesOf, powerBankEfficiency } from '../../src/charging/things/practice.ts'
import type { Chart } from '../../src/charts/chart.ts'
import { drainChart } from '../../src/charts/drain-chart.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { packKind } from '../../src/language/kinds/values.ts'
import { cite } from '../shared/setting.words.ts'
import type { Sized } from './source.ts'

export function sizeWords({ count, all_Wh, station_Wh, deepCycle_Ah, setting }: Sized, { say, show }: Locale): Text[] {
  const packs = count === 1 ? say`One pack takes` : say`${show.number(count, 0)} packs take`
  return [
    say`${packs} about ${show.energy(all_Wh)} at the charger's input.`,
    say`That is a power bank or power station of ${show.energy(Math.ceil(station_Wh))} or more, or a 12 V leisure battery of ${show.capacity(Math.ceil(deepCycle_Ah))} or more, which gives half of its label.`,
    say`It must give ${show.power(Math.ceil(setting.input_W))} for each pack that is charged at the same time, at ${show.current(setting.current_A)} and ${show.perCell(setting.cutoff.perCell_V)} per cell.`,
  ]
}

export function sizeWorking(
  { count, one_Wh, all_Wh, sure_Wh, each, setting, starter_Ah, permit }: Sized,
  locale: Locale,
): readonly Text[] {
  const { say, show } = locale
  const { starter, 'deep-cycle': deepCycle } = leadAcidLimits
  return [
    say`One pack: ${show.energy(each.charge.energy_Wh)} ÷ ${show.number(setting.efficiency, 2)} = ${show.energy(one_Wh)} at the charger's input; × ${show.number(count, 0)} = ${show.energy(all_Wh)}.`,
    say`To be sure of that: × ${show.number(setting.efficiency, 2)} ÷ ${show.number(efficienciesOf(permit.situation.charger).low, 2)} ÷ ${show.number(1 - otherSpread.value, 2)} = ${show.energy(sure_Wh)} (${cite(chargerEfficiencies, locale)}; ${cite(otherSpread, locale)}).`,
    say`Power bank or power station: ÷ ${show.number(powerBankEfficiency.value, 2)} (${cite(powerBankEfficiency, locale)}).`,
    say`Leisure battery: ÷ ${show.voltage(deepCycle.restFloor_V.value)} ÷ ${show.number(deepCycle.share.value, 1)} (${cite(deepCycle.share, locale)}). A starter battery would have to be of ${show.capacity(Math.ceil(starter_Ah))} (${cite(starter.share, locale)}).`,
  ]
}

/** Of a battery source that carries a pack or more; other sources keep their volts. */
export function drainPictures(
  { setting, each, planned, permit }: SourcePlan & { readonly permit: Permit },
  locale: Locale,
): readonly Chart[] {
  const { say, show, own } = locale
  const { source, pack } = permit.situation
  const store = setting.feed?.store
  if (!store || source?.kind !== 'battery' || planned === 0) return []
  const draws = drawsOf(each.charge, pack.series, setting.efficiency)
  const feeding = own(packKind.write(source.pack))
  return [
    drainChart({
      what: planned === 1 ? say`${feeding} feeds 1 pack` : say`${feeding} feeds ${show.number(planned, 0)} packs`,
      points: drainCurve(store, draws, planned),
      floor_V: store.loadFloor_V,
      packEnds_s: Array.from({ length: planned }, (_, index) => (index + 1) * each.charge.duration_s),
      locale,
    }),
  ]
}
