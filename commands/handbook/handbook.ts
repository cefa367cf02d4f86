// Answers what, why and may I from the handbook of the club. Where leave is asked for a danger, the envelope answers.

import { optional, required, session } from '../../src/assistant/command.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { type AskedOfHandbook, askedOf, wordedBy } from '../../src/handbook/asked.ts'
import { handbook as entries } from '../../src/handbook/entries.ts'
import { textKind } from '../../src/language/kinds/text-kinds.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import { temperatureKind } from '../../src/language/kinds/values.ts'

/** A question in a person's own words: all the words that follow. */
const questionKind: ValueKind<AskedOfHandbook> = {
  name: textKind.name,
  example: 'why is the last bit so slow',
  read: (text, earlier) => {
    const { value, assumed } = textKind.read(text, earlier)
    return { value: askedOf(value), assumed }
  },
  write: wordedBy,
  complete: prefix => {
    const begun = prefix.trim().toLowerCase()
    return entries
      .map(({ title }) => title)
      .filter(title => title.toLowerCase().startsWith(begun))
      .slice(0, 25)
  },
}

const likeliest: Pack = { chemistry: chemistries[0], series: 1, parallel: 1, capacity_Ah: 1 }

export const handbook = session({
  name: 'handbook',
  shelf: 'learn handbook',
  takes: { about: required(questionKind), temperature: optional(temperatureKind) },
  examples: [
    'handbook about: why is the last bit so slow',
    'handbook about: what is storage voltage',
    'handbook about: may i charge overnight',
  ],
  // How warm the cells are decides whether they may be charged, whatever else is asked.
  situations: ({ about: { dangers }, temperature }) =>
    temperature !== undefined
      ? [
          {
            act: 'charge',
            pack: likeliest,
            kindOnly: true,
            // A number says it better.
            dangers: dangers.filter(danger => danger !== 'coldPack'),
            temperature_C: temperature,
            doubts: ['chemistryAssumed'],
          },
        ]
      : dangers.length > 0
        ? [{ act: 'look', dangers }]
        : [],
  compute: (_, { about, temperature }) => (temperature === undefined ? about : { ...about, dangers: [] }),
  deeds: () => [],
})
