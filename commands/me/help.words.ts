// How to ask, in words: of everything, or of one command.

import type { Entry, WordsOf } from '../../src/assistant/command.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import type { helpOn } from './help.ts'

export const helpWords: WordsOf<ReturnType<typeof helpOn>> = locale => {
  const { say, own } = locale
  return {
    summary: say`What I answer; with a command, how to ask it.`,
    takes: { about: { about: say`a command` } },
    answer: (_, { about }) => [
      about
        ? summaryOf(about, locale)
        : say`Ask in plain words or with a command and its details, for example: ${own('how long for 2S 450 LiPo at 0.5A')}`,
    ],
    figures: {},
    working: ({ commands }, { about }) => (about ? waysToAsk(about, locale) : everything(commands, locale)),
  }
}

const summaryOf = (command: Entry, locale: Locale): Text =>
  locale.say`${locale.own(command.name)}: ${command.words(locale).summary}`

const everything = (commands: readonly Entry[], locale: Locale): readonly Text[] => {
  const { say, own } = locale
  return [
    ...commands.map(command => summaryOf(command, locale)),
    say`Details go by name in any order (${own('time pack: 3S 720 LiHV current: 1A')}). "${own('help about: time')}" tells more of one.`,
  ]
}

function waysToAsk({ takes, examples, words }: Entry, locale: Locale): readonly Text[] {
  const { say, own } = locale
  const described = words(locale).takes
  const details = Object.entries(takes).map(([option, { required, kind }]) => {
    const name = required ? own(option) : say`${own(option)} (if you like)`
    return say`${name}: ${described[option]?.about ?? own('')}, such as ${own(kind.example)}`
  })
  return [...details, ...examples.map(example => say`Try: ${own(example)}`)]
}
