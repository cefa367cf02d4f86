// Chargers: `0.3/0.8/1.5/3A 60W 1-5S 10-26V`, `0.1-10A by 0.1 200W 6S 10-30V`; the parts in any order.

import type { Charger, CurrentSteps } from '../../charging/things/charger.ts'
import type { Said } from '../../ground/locale.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import * as texts from '../parts/charger.words.ts'
import { chargerDetail, cutoffs, cutoffsAt } from '../parts/charger-details.ts'
import { type ChargerDraft, chargerPart, inputVolts, usualIncrement_A } from '../parts/charger-parts.ts'
import { type Grammar, readWhole } from '../parts/whole.ts'
import { writeQuantity } from '../quantities/quantity.ts'
import type { Read } from '../scan/read.ts'

const grammar: Grammar<ChargerDraft> = {
  part: (sentence, at, draft) => {
    const end = chargerDetail(sentence, at, draft) ?? chargerPart(sentence, at, draft) ?? cutoffsAt(sentence, at, draft)
    if (end !== undefined || draft.named || !/^(?:charger|steps?|settings?)$/.test(sentence.word(at))) return end
    draft.named = true
    return at + 1
  },
  figures: [
    ['power'],
    ['share', { phrase: texts.efficiencyPhrase, min: 0.5, example: '85%' }],
    ['voltage', inputVolts],
    ['current'],
  ],
  wanted: { expected: texts.aCharger, example: '0.3/0.8/1.5/3A 60W 1-5S 10-26V' },
}

/** Reads the whole text as one charger. Throws a Problem for an unknown word, a range, or no current at all. */
export function readCharger(text: string): Read<Charger> {
  const plain = plainText(text)
  const draft: ChargerDraft = {}
  readWhole(plain, grammar, draft)
  for (const volts of draft.cutoffs_V ?? []) checkedCutoff(volts)
  const { cells, input, power_W, efficiency, balance_A, needsBalanceLead, cutoffs_V } = draft
  const { steps, assumed } = stepsOf(draft) ?? {}
  if (!steps) throw problemAt(plain, texts.lacksCurrents, grammar.wanted)
  const value: Charger = {
    currents: steps,
    power_W,
    minSeries: cells?.min,
    maxSeries: cells?.max,
    minInput_V: input?.min,
    maxInput_V: input?.max,
    efficiency,
    balance_A,
    needsBalanceLead,
    cutoffs_V,
  }
  return { value, assumed: assumed === undefined ? [] : [assumed] }
}

/** What a charger told by its input alone is taken to give: common practice. */
const usualMost_A = 10

/** Undefined without currents; "80W charger" has those that such chargers offer: a tenth of its watts in A, within reason. */
function stepsOf(draft: ChargerDraft): { steps: CurrentSteps; assumed?: Said } | undefined {
  const { steps, from_A, most_A, by_A, power_W } = draft
  if (steps) return { steps: { kind: 'list', steps_A: steps } }
  const range = (from: number, to_A: number, increment_A = usualIncrement_A): CurrentSteps => ({
    kind: 'range',
    from_A: from,
    to_A,
    increment_A,
  })
  if (most_A !== undefined && from_A !== undefined) {
    const assumed = by_A === undefined ? texts.stepTaken(usualIncrement_A) : undefined
    return { steps: range(from_A, most_A, by_A), assumed }
  }
  if (most_A !== undefined) return { steps: { kind: 'list', steps_A: [most_A] } }
  if (!draft.named || (power_W ?? draft.input) === undefined) return undefined
  const to_A = power_W === undefined ? usualMost_A : Math.min(20, Math.max(1, Math.round(power_W / 10)))
  return { steps: range(usualIncrement_A, to_A), assumed: texts.currentsTaken(power_W, usualIncrement_A, to_A) }
}

function checkedCutoff(volts: number): void {
  if (volts >= cutoffs.min && volts <= cutoffs.max) return
  throw problemAt(`${volts}V`, texts.neitherCutoffNorInput, {
    expected: texts.cutoffsOrInput(cutoffs.min, cutoffs.max),
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

function writeCurrentSteps(steps: CurrentSteps): string {
  if (steps.kind === 'list') return `${steps.steps_A.join('/')}A`
  const { from_A, to_A, increment_A } = steps
  return `${from_A}-${writeQuantity(to_A, 'current')} by ${increment_A}`
}
