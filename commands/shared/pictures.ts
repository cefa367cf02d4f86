// The pictures that go with a charge and with a source.

import type { TimedCharge } from '../../src/charging/setting/old-timed-charge.ts'
import { drainCurve } from '../../src/charging/simulation/drain-curve.ts'
import { drawsOf } from '../../src/charging/simulation/supply-run.ts'
import type { SourcePlan } from '../../src/charging/sources/source-plan.ts'
import type { Target } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Source } from '../../src/charging/things/source.ts'
import { chargeChart } from '../../src/charts/charge-chart.ts'
import type { Chart } from '../../src/charts/chart.ts'
import { drainChart } from '../../src/charts/drain-chart.ts'
import { english } from '../../src/ground/locale.ts'
import type { Show } from '../../src/ground/show.ts'
import { packKind } from '../../src/language/kinds/values.ts'

/** None of a charge that must not be done: a picture invites. */
export function chargePictures(timed: TimedCharge, pack: Pack, target: Target, show: Show): Chart[] {
  if (timed.verdict === 'do not charge') return []
  const end = target.kind === 'soc' ? show.percent(target.soc) : show.perCell(target.perCell_V)
  const locale = english(show.mark)
  const what = locale.own(`${packKind.write(pack)}, ${show.current(timed.current_A)} to ${end}`)
  return [chargeChart({ what, charge: timed.charge, end_s: timed.time_s, locale })]
}

/** Of a battery source that carries a pack or more; other sources keep their volts. */
export function sourcePictures(plan: SourcePlan, source: Source, pack: Pack, show: Show): Chart[] {
  const store = plan.setting.feed?.store
  if (!store || source.kind !== 'battery' || plan.planned === 0) return []
  const draws = drawsOf(plan.each.charge, pack.series, plan.setting.efficiency)
  const locale = english(show.mark)
  const packs = plan.planned === 1 ? '1 pack' : `${plan.planned} packs`
  return [
    drainChart({
      what: locale.own(`${packKind.write(source.pack)} feeds ${packs}`),
      points: drainCurve(store, draws, plan.planned),
      floor_V: store.loadFloor_V,
      packEnds_s: Array.from(
        { length: plan.planned },
        (_, index) => (index + 1) * plan.each.charge.duration_s,
      ),
      locale,
    }),
  ]
}
