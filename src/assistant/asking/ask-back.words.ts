// What is asked back: one thing, with a few choices, and what is known so far.

import { type Locale, type Said, told } from '../../ground/locale.ts'
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

/** `about` says what the detail is. */
export const detailMissing = told(({ say, own }, about: Text, soFar: string) =>
  soFar === '' ? say`I need one thing more: ${about}.` : say`For ${own(soFar)} I need one thing more: ${about}.`,
)

export const notClear: Said = ({ say }) => say`I did not get what you want to know. Did you mean one of these?`

export const notOurs: Said = ({ say }) =>
  say`That is none of my business: I know about charging batteries of small electric aircraft. Ask me one of these, for example.`

export const sampleQuestions = told(({ own }, samples: readonly string[]) => joined(samples.map(own), ' · '))

export const alternative = (name: string, figures: readonly string[], { say, own }: Locale): Text =>
  say`Were it ${own(name)}: ${own(figures.join(', '))}.`
