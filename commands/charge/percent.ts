// How full a resting cell is by its volts, and the volts of a cell that full.

import { defineCommand, optional, required } from '../../src/assistant/old-command.ts'
import type { Answer } from '../../src/assistant/reply.ts'
import { cautionsFor } from '../../src/cautions/cautions.ts'
import { whyUnfit } from '../../src/charging/setting/fitness.ts'
import type { Refused } from '../../src/charging/setting/refusal.ts'
import type { Chemistry } from '../../src/charging/things/chemistry.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import {
  chargeAtRest,
  meterError_V,
  type RestCharge,
  type Telling,
  voltsAtRest,
} from '../../src/charging/upkeep/rest-charge.ts'
import type { Show } from '../../src/ground/show.ts'
import { cellsKind, packKind, stateKind } from '../../src/language/kinds/values.ts'
import { chargeFigure, spanOf } from '../shared/charge-figure.ts'
import { figuresIn } from '../shared/figure.ts'
import { followUp } from '../shared/follow-up.ts'
import { levelsOf } from '../shared/levels.ts'
import { packOrCell } from '../shared/one-cell.ts'
import { refusedAnswer } from '../shared/refused.ts'
import { cite } from '../shared/working.ts'

export const percent = defineCommand({
  name: 'percent',
  summary: 'How full a resting pack is by its volts, or its volts at a charge.',
  options: {
    pack: optional(packKind, { description: 'the pack, for pack volts and mAh', phrase: text => text }),
    chemistry: optional(cellsKind, { description: 'where no pack is named', phrase: text => text }),
    at: required(stateKind, {
      description: 'resting volts per cell or of the pack, or a percentage',
      phrase: text => `at ${text}`,
    }),
  },
  examples: [
    'percent pack: 3S 720 LiHV at: 11.55V',
    'percent chemistry: LiFe at: 3.3V',
    'percent pack: 6S 1300 LiPo at: 40%',
  ],
  plainWords: [
    'how full',
    'state of charge',
    'how much is left',
    'what percent',
    'what percentage',
    'how much left',
  ],
  meantBy: [
    ['chemistry', 'level'],
    ['chemistry', 'voltage'],
    ['chemistry', 'percent'],
    ['cells', 'level'],
    ['cells', 'voltage'],
    ['cells', 'percent'],
  ],
  answer: ({ pack, chemistry: cells, at }, { house, show }) => {
    const known = packOrCell(pack, cells, 'percent chemistry: LiPo at: 3.85V')
    const chemistry = known.chemistry
    const { from } = levelsOf(known, house, at)
    if (from.kind === 'rest') {
      const unfit = whyUnfit({ pack: known, restPerCell_V: from.perCell_V })
      return unfit
        ? refusedVolts(unfit, known, from.perCell_V, show)
        : byVolts(chargeAtRest(chemistry, from.perCell_V), chemistry, pack, show)
    }
    return byCharge(from.soc, chemistry, pack, show)
  },
})

/** Volts above full are as wrong on the charger as in the cells: the question may have meant either. */
function refusedVolts(unfit: Refused, pack: Pack, restPerCell_V: number, show: Show): Answer {
  const answer = refusedAnswer(unfit, { pack, restPerCell_V }, show)
  if (unfit.refusal.kind !== 'overcharged cell') return answer
  const full = show.perCell(unfit.refusal.full_V)
  return {
    ...answer,
    headline: `${answer.headline} Never set a charger to that for ${pack.chemistry.name} either: ${full} is the most.`,
  }
}

const tellingWords: Record<Telling, string> = {
  well: '',
  roughly: 'Cells of this kind differ much here: take it as a rough guide.',
  flat: 'The curve is flat here: volts tell little. Count the mAh put in instead.',
}

function byVolts(found: RestCharge, chemistry: Chemistry, pack: Pack | undefined, show: Show): Answer {
  const { soc, band, perCell_V, telling } = found
  const isLow = perCell_V < chemistry.restFloor_V.value
  const figure = figuresIn(show)
  const left_Ah = pack && Math.floor(soc * pack.capacity_Ah * 1000) / 1000
  return {
    headline: [
      `${show.perCell(perCell_V)} per cell at rest is about ${show.percent(soc)} of a ${chemistry.name} cell's charge (${spanOf(band, show)}).`,
      tellingWords[telling],
      isLow ? lowWords(perCell_V, chemistry, show) : '',
    ]
      .filter(Boolean)
      .join(' '),
    figures: [
      chargeFigure('charge', found, show),
      figure.perCell('restPerCell', 'volts per cell at rest', perCell_V),
      ...(pack && left_Ah !== undefined
        ? [
            figure.voltage('restPack', 'volts of the pack', perCell_V * pack.series),
            figure.capacity('chargeLeft', 'left in the pack, about', left_Ah),
          ]
        : []),
    ],
    working: working(chemistry, show),
    cautions: cautionsFor({ pack, restPerCell_V: perCell_V }),
    followUps: pack ? [followUp('What to set?', 'current', { pack: packKind.write(pack) })] : [],
  }
}

function lowWords(perCell_V: number, { restFloor_V, precharge_V }: Chemistry, show: Show): string {
  const floor = `That is below the floor of ${show.perCell(restFloor_V.value)}`
  return perCell_V < precharge_V.value
    ? `${floor}, and deeply run down: check every cell; if none is hurt, charge it in sight, with a tenth of the usual current until every cell is above ${show.perCell(precharge_V.value)}.`
    : `${floor}: charge it before it rests any longer.`
}

function byCharge(soc: number, chemistry: Chemistry, pack: Pack | undefined, show: Show): Answer {
  const { perCell_V, band } = voltsAtRest(chemistry, soc)
  const figure = figuresIn(show)
  const inPack = pack ? `, ${show.voltage(perCell_V * pack.series)} for ${pack.series}S` : ''
  const { telling } = chargeAtRest(chemistry, perCell_V)
  return {
    headline:
      `At ${show.percent(soc)} a ${chemistry.name} cell rests at about ${show.perCell(perCell_V)}${inPack} (${show.perCell(band.low)} to ${show.perCell(band.high)} per cell). ${tellingWords[telling]}`.trim(),
    figures: [
      figure.perCell('restPerCell', 'volts per cell at rest', perCell_V, band),
      figure.percent('soc', 'charge', soc),
      ...(pack
        ? [
            figure.voltage('restPack', 'volts of the pack', perCell_V * pack.series),
            figure.capacity(
              'chargeLeft',
              'left in the pack, about',
              Math.floor(soc * pack.capacity_Ah * 1000) / 1000,
            ),
          ]
        : []),
    ],
    working: working(chemistry, show),
    cautions: cautionsFor({ pack, restPerCell_V: perCell_V }),
    followUps: [],
  }
}

function working(chemistry: Chemistry, show: Show): string[] {
  return [
    `Curve of ${chemistry.name} at rest: ${cite(chemistry.curve)}.`,
    `The range spans published cells of the kind and a meter that is off by ${show.number(meterError_V.value, 2)} V (${cite(meterError_V)}).`,
    'At rest means unplugged for half an hour or more (common practice): volts climb for that long after a flight, and sink after a charge.',
  ]
}
