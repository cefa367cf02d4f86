// The working of a plan on a source: the energies of one pack and of all, and that they add up.

import type { SourcePlan } from '../../src/charging/sources/source-plan.ts'
import { chargerEfficiency } from '../../src/charging/things/practice.ts'
import type { Show } from '../../src/ground/show.ts'
import { cite } from '../shared/working.ts'

export function planWorking({ setting, each, planned, balance }: SourcePlan, show: Show): string[] {
  const { energy_Wh } = each.charge
  const { efficiency } = setting
  const { sourceOut_Wh, intoPacks_Wh, converterLoss_Wh, sourceLoss_Wh } = balance
  const rule = efficiency === chargerEfficiency.value ? cite(chargerEfficiency) : 'efficiency of the charger'
  return [
    `One pack: ${show.energy(energy_Wh)} ÷ ${show.number(efficiency, 2)} = ${show.energy(energy_Wh / efficiency)} at the charger's input (${rule}).`,
    `Energy for ${planned}: out of the source ${show.energy(sourceOut_Wh)} = into the packs ${show.energy(intoPacks_Wh)} + lost in the charger ${show.energy(converterLoss_Wh)} + lost in the source ${show.energy(sourceLoss_Wh)}.`,
    'Times count the charges only, not the swapping of packs.',
  ]
}
