// A charger's cutoff checked with a meter, and which cutoff to choose where its list lacks the one wanted.

import { defineCommand, optional } from '../../src/assistant/old-command.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { judgeTrim } from '../../src/charging/upkeep/trim.ts'
import { Problem } from '../../src/ground/problem.ts'
import { cutoffsKind } from '../../src/language/kinds/reading-kinds.ts'
import { cellsKind, chargerKind, packKind, stateKind, targetKind } from '../../src/language/kinds/values.ts'
import type { Level } from '../../src/language/things/state.ts'
import { packOrCell } from '../shared/one-cell.ts'
import { anyCutoff, chosenCutoff } from './trim-choice.ts'
import { judgedTrim } from './trim-words.ts'

const options = {
  pack: optional(packKind, { description: 'the pack it was measured on', phrase: text => text }),
  chemistry: optional(cellsKind, { description: 'where no pack is named', phrase: text => text }),
  shown: optional(stateKind, {
    description: 'what the charger shows at the end of a charge',
    phrase: text => `shown ${text}`,
  }),
  measured: optional(stateKind, {
    description: 'what a trusted meter says then',
    phrase: text => `measured ${text}`,
  }),
  charger: optional(chargerKind, {
    description: 'with the cutoffs it offers',
    phrase: text => `on a charger with ${text}`,
  }),
  cutoffs: optional(cutoffsKind, {
    description: 'those that the charger offers, where nothing else of it matters',
    phrase: text => `from ${text}`,
  }),
  to: optional(targetKind, {
    description: 'the cutoff wanted; full when not said',
    phrase: text => `to ${text}`,
  }),
}

const checked = 'trim chemistry: LiPo shown: 4.20V measured: 4.23V'

export const trim = defineCommand({
  name: 'trim',
  summary: "The cutoff to set, from those a charger has, or a charger's cutoff against a meter.",
  options,
  examples: [
    checked,
    'trim pack: 3S 720 LiHV shown: 13.05V measured: 12.96V',
    'trim chemistry: 3S LiHV',
    'trim pack: 2S 2600 Li-ion charger: 1/2/3A 4.15/4.20/4.35V to: 4.10V per cell',
  ],
  plainWords: [
    'trim',
    'calibrate',
    'calibration',
    'charger is off',
    'check the charger',
    'meter says',
    'what cutoff',
    'which cutoff',
    'cutoff for',
    'what voltage do i set',
    'what voltage do i charge',
    'what voltage should i set',
    'what voltage should i charge',
    'how many volts is a full',
    'what is full',
  ],
  meantBy: [
    ['chemistry', 'goal'],
    ['cells', 'goal'],
  ],
  answer: (inputs, context) => {
    const pack = packOrCell(inputs.pack, inputs.chemistry, checked)
    const judgedPack = { pack, named: inputs.pack !== undefined }
    const { shown, measured, charger } = inputs
    if ((shown === undefined) !== (measured === undefined)) throw bothWanted()
    const judged =
      shown && measured && judgeTrim(voltsOf(shown, pack, 'shown'), voltsOf(measured, pack, 'measured'))
    const faulty = judged?.verdict === 'faulty'
    const cutoffs_V = inputs.cutoffs ?? charger?.cutoffs_V
    if (cutoffs_V && !faulty)
      return chosenCutoff({ ...judgedPack, cutoffs_V, to: inputs.to, error_V: judged?.error_V ?? 0 }, context)
    if (judged && measured)
      return judgedTrim(judgedPack, judged, voltsOf(measured, pack, 'measured'), context)
    return anyCutoff({ ...judgedPack, to: inputs.to }, context)
  },
})

/** A reading is volts; full stands for the chemistry's full volts. */
function voltsOf(level: Level, { chemistry }: Pack, name: string): number {
  if (level.kind === 'rest') return level.perCell_V
  if (level.kind === 'named' && level.name === 'full') return chemistry.full_V.value
  throw new Problem({
    what: `I need ${name} in volts.`,
    expected: 'volts per cell, or pack volts where the pack is named',
    example: `${name}: 4.20V`,
  })
}

const bothWanted = (): Problem =>
  new Problem({
    what: 'I need both what the charger shows and what the meter says.',
    expected: 'shown: and measured: in volts',
    example: checked,
  })
