// "2S 450 3.2V": low for one cell, ruin for the whole pack. Which of both it is, is asked before anything is made of it.

import type { Locale } from '../../ground/locale.ts'
import { attempt, Problem } from '../../ground/problem.ts'
import { type Question, writeQuestion } from '../../language/sentence/question.ts'
import { readPack } from '../../language/things/pack.ts'
import { cellOrPackWords, justFlown, notSure, oneCell, theWholePack } from './ask-back.words.ts'

const told = /^(\d(?:\.\d+)?)V(?: per cell)?$/
const saysWhich = /\b(?:cells?|each|per|packs?|whole|all|total|together|apiece|lowest|cutoff)\b/i
/** Below this no pack shows anything. */
const least_V = 1

/** Undefined where it was said, where a cell stands so while it is used, and where it cannot be the whole pack. */
export function cellOrPack({ command, options, told: rests }: Question, text: string, locale: Locale) {
  const option = ['at', 'from'].find(name => told.test(options[name] ?? ''))
  const pack = attempt(() => readPack(options.pack ?? '').value)
  if (option === undefined || !pack || pack.series < 2 || saysWhich.test(text)) return undefined
  const volts_V = Number(told.exec(options[option] ?? '')?.[1])
  if (volts_V >= pack.chemistry.loadFloor_V.value || volts_V < least_V * pack.series) return undefined
  const choices = [`${volts_V}V per cell`, `${volts_V}V pack`]
  const labels = [oneCell(locale), theWholePack(locale)]
  const { [option]: _, ...others } = options
  return {
    /** The question with that left open, and what it may be. */
    frame: { question: { command, options: others }, pending: { missing: { option }, choices, told: undefined } },
    problem: new Problem({
      what: cellOrPackWords(volts_V, options.pack ?? ''),
      expected: ({ own }) => own(choices.join(', ')),
      example: choices[0] ?? '',
      choices: [
        ...choices.map((choice, at) => ({
          label: labels[at] ?? choice,
          question: writeQuestion({ command, options: { ...options, [option]: choice }, told: rests }),
        })),
        { label: justFlown(locale), question: 'handbook about: Voltage sag' },
        { label: notSure(locale), question: 'handbook about: Measuring each cell' },
      ],
    }),
  }
}
