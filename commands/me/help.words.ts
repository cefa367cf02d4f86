// How to ask, in words: of everything, or of one command.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { Command } from '../../src/assistant/old-command.ts'
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
    plainWords: ['help me', 'what can you do', 'what do you answer', 'how do i ask'],
  }
}

function summaryOf(command: Command, locale: Locale): Text {
  const { say, own } = locale
  return say`${own(command.name)}: ${command.wordsIn?.(locale).summary ?? own(command.summary)}`
}

const everything = (commands: readonly Command[], locale: Locale): readonly Text[] => {
  const { say, own } = locale
  return [
    ...commands.map(command => summaryOf(command, locale)),
    say`Details go by name in any order (${own('time pack: 3S 720 LiHV current: 1A')}). "${own('help about: time')}" tells more of one.`,
  ]
}

function waysToAsk(command: Command, locale: Locale): readonly Text[] {
  const { say, own } = locale
  const words = command.wordsIn?.(locale).takes
  const details = Object.entries(command.options).map(([option, { required, description, kind }]) => {
    const about = words?.[option]?.about ?? own(description)
    const example = own(kind.example)
    return required
      ? say`${own(option)}: ${about}, such as ${example}`
      : say`${own(option)} (if you like): ${about}, such as ${example}`
  })
  return [...details, ...command.examples.map(example => say`Try: ${own(example)}`)]
}
