// Chargers: `0.3/0.8/1.5/3A 60W 1-5S 10-26V`, `0.1-10A by 0.1 200W 6S 10-30V`; the parts in any order.

import type { Charger } from '../../charging/things/charger.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import type { Wanted } from '../../ground/problem.ts'
import { writeQuantity } from '../quantities/quantity.ts'
import { readParts } from '../scan/parts.ts'
import type { Read } from '../scan/read.ts'
import { Scanner } from '../scan/scanner.ts'
import { aCharger, cutoffsOrInput, lacksCurrents, neitherCutoffNorInput } from './charger.words.ts'
import { type ChargerDraft, chargerParts, cutoffs } from './charger-parts.ts'
import { usualSteps, writeCurrentSteps } from './current-steps.ts'

const wanted: Wanted = { expected: aCharger, example: '0.3/0.8/1.5/3A 60W 1-5S 10-26V' }
/** Reads the whole text as one charger. Throws a Problem for an unknown word, a range, or no current at all. */
export function readCharger(text: string): Read<Charger> {
  const scan = new Scanner(plainText(text))
  const draft: ChargerDraft = {}
  readParts(scan, chargerParts, draft, wanted)
  const charger = finished(draft)
  if (charger) return charger
  throw problemAt(scan.text, lacksCurrents, wanted)
}

/** Undefined without currents; "80W charger" has those that such chargers offer. */
function finished(draft: ChargerDraft): Read<Charger> | undefined {
  const { power_W, cells, input, named } = draft
  const usual = named && power_W !== undefined ? usualSteps(power_W) : undefined
  const currents = draft.currents ?? usual?.steps
  if (!currents) return undefined
  for (const volts of draft.cutoffs_V ?? []) checkedCutoff(volts)
  const value: Charger = {
    currents,
    power_W,
    minSeries: cells?.min,
    maxSeries: cells?.max,
    minInput_V: input?.min,
    maxInput_V: input?.max,
    efficiency: draft.efficiency,
    balance_A: draft.balance_A,
    needsBalanceLead: draft.needsBalanceLead,
    cutoffs_V: draft.cutoffs_V,
  }
  const assumed = draft.currents ? draft.assumed : usual?.assumed
  return { value, assumed: assumed === undefined ? [] : [assumed] }
}

function checkedCutoff(volts: number): void {
  if (volts >= cutoffs.min && volts <= cutoffs.max) return
  throw problemAt(`${volts}V`, neitherCutoffNorInput, {
    expected: cutoffsOrInput(cutoffs.min, cutoffs.max),
    example: volts > cutoffs.max ? '10-26V' : cutoffs.example,
  })
}

/** Canonical text; reading it gives the same charger. */
export function writeCharger(charger: Charger): string {
  const { minSeries, maxSeries, minInput_V, maxInput_V } = charger
  const words = [
    writeCurrentSteps(charger.currents),
    charger.power_W !== undefined && writeQuantity(charger.power_W, 'power'),
    window(minSeries, maxSeries, 'S', most => `${most}S`),
    window(minInput_V, maxInput_V, 'V', most => `up to ${most}V`),
    charger.efficiency !== undefined && writeQuantity(charger.efficiency, 'share'),
    charger.balance_A !== undefined && `balance ${writeQuantity(charger.balance_A, 'current')}`,
    charger.needsBalanceLead && 'needs balance lead',
    charger.cutoffs_V !== undefined && charger.cutoffs_V.length > 0 && `${charger.cutoffs_V.join('/')}V`,
  ]
  return words.filter(Boolean).join(' ')
}

function window(
  min: number | undefined,
  max: number | undefined,
  unit: string,
  upTo: (max: number) => string,
): string | undefined {
  if (min === undefined) return max === undefined ? undefined : upTo(max)
  if (max === undefined) return `${min}${unit}+`
  return min === max && unit === 'V' ? `${min}V input` : `${min}-${max}${unit}`
}
