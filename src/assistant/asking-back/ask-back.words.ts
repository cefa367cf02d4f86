// What is asked back: one thing, with a few choices, and what is known so far.

import type { Chemistry } from '../../charging/things/chemistry.ts'
import { type Locale, type Said, told } from '../../ground/locale.ts'
import { type Choice, Problem } from '../../ground/problem.ts'
import { joined, type Text } from '../../ground/text.ts'

/** "1 LiPo · 2 LiHV": a number or the words themselves will do as an answer. */
export const choicesWords = told(({ say, own }, choices: readonly string[]) =>
  choices.length === 0
    ? say`the value in your own words`
    : joined(
        choices.map((choice, index) => own(`${index + 1} ${choice}`)),
        ' · ',
      ),
)

export const capacityMissing = told(({ say, own }, soFar: string) =>
  soFar === ''
    ? say`How many mAh has the pack? It is printed on its label.`
    : say`How many mAh has the ${own(soFar)}? It is printed on its label.`,
)

export const cellsMissing = told(({ say, own }, soFar: string) =>
  soFar === ''
    ? say`How many cells has the pack? It is printed on its label.`
    : say`How many cells has the pack (${own(soFar)})? It is printed on its label.`,
)

/** `about` says what the detail is. */
export const detailMissing = told(({ say, own }, about: Text, soFar: string) =>
  soFar === '' ? say`I need one thing more: ${about}.` : say`For ${own(soFar)} I need one thing more: ${about}.`,
)

/** `readAs` are the details of what would be done. */
export const changeMeant = told(({ say }, command: string, summary: Text, readAs: Text) =>
  `${readAs}` === command ? say`Shall I do this? ${summary}` : say`Shall I do this? ${summary} Here: ${readAs}.`,
)

export const cellOrPackWords = told(
  ({ say, show, own }, volts_V: number, pack: string) =>
    say`${show.voltage(volts_V)} on ${own(pack)}: one cell, or the whole pack?`,
)
export const oneCell: Said = ({ say }) => say`one cell`
export const theWholePack: Said = ({ say }) => say`the whole pack`
export const justFlown: Said = ({ say }) => say`just flown`
export const notSure: Said = ({ say }) => say`not sure`

/** `again` asks the same in notation, which is not asked about again. */
export const yesOrNo = (what: Said, again: string): Problem =>
  new Problem({
    what,
    expected: ({ say }) => say`yes or no`,
    example: 'yes',
    choices: [
      { label: 'yes', question: again },
      { label: 'no', question: 'no' },
    ],
  })
export const nothingChanged: Said = ({ say }) => say`All right, nothing was changed.`

export const notClear: Said = ({ say }) =>
  say`I did not get what you want to know of charging or keeping packs. Did you mean one of these?`

export const notOurs: Said = ({ say }) =>
  say`That is none of my business: I know about charging batteries of small electric aircraft. Ask me one of these, for example.`

export const restNotClear: Said = ({ say }) => say`What else you want to know I did not get: say it in other words.`

export const nothingOnThat: Said = ({ say }) =>
  say`The handbook has nothing on that, or not in these words. Do you mean one of these?`

export const withSamples = (what: Said, choices: readonly Choice[]): Problem =>
  new Problem({
    what,
    expected: ({ own }) => own(choices.map(({ label }) => label).join(' · ')),
    example: choices[0]?.label ?? 'help',
    choices,
  })

/** What it would be were it of another type, which the printed volts tell. */
export const alternative = (
  { name, roundCells }: Chemistry,
  printed_V: number,
  figures: readonly string[],
  { say, show, own }: Locale,
): Text => {
  const instead = own(`${name}, ${figures.join(', ')}`)
  return roundCells
    ? say`Round, or ${show.voltage(printed_V)}: ${instead}.`
    : say`${show.voltage(printed_V)} printed: ${instead}.`
}

export const nothingPrinted = ({ say }: Locale): Text => say`Nothing printed: keep it off the charger.`
