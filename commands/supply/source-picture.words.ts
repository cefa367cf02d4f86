// The picture of a battery that feeds a charger: its volts under load, pack by pack.

import { drainCurve } from '../../src/charging/simulation/drain-curve.ts'
import { drawsOf } from '../../src/charging/simulation/supply-run.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import type { SourcePlan } from '../../src/charging/sources/source-plan.ts'
import type { Chart } from '../../src/charts/chart.ts'
import { drainChart } from '../../src/charts/drain-chart.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { packKind } from '../../src/language/kinds/values.ts'

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
