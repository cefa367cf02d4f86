// How to ask, in words: by theme, of one theme, or of one command; and what is said to a greeting.

import type { Entry, WordsOf } from '../../src/assistant/command.ts'
import { shelfOf } from '../../src/assistant/naming/shelf.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import { followUp } from '../shared/next.ts'
import { type hello, type helpOn, type Theme, themes } from './help.ts'

export const helloWords: WordsOf<typeof hello> = ({ say, own }) => ({
  summary: say`Says in a line what I am for, and what to ask first.`,
  takes: {},
  answer: () => [
    say`Glad to help. I am a program, no person: I know about charging packs of small electric aircraft, and nothing else.`,
    say`Try: ${own('what current for a 3S 720 LiHV')}`,
  ],
  next: () => [
    followUp(say`What to set`, 'current', { pack: '3S 720 LiHV' }),
    followUp(say`How long`, 'time', { pack: '3S 720 LiHV', from: '3.7V per cell' }),
    followUp(say`Lessons`, 'lesson list'),
    followUp(say`All I answer`, 'help'),
  ],
})

const names = Object.keys(themes) as Theme[]

export const helpWords: WordsOf<ReturnType<typeof helpOn>> = locale => {
  const { say, own } = locale
  const of = (theme: Theme, commands: readonly Entry[]) =>
    themes[theme].flatMap(family => commands.filter(command => shelfOf(command).family === family))
  return {
    summary: say`What I answer; with a theme or a command, how to ask it.`,
    takes: { about: { about: say`a theme or a command` } },
    answer: (_, { about }) => [
      about === undefined
        ? say`Ask in your own words, like this:`
        : about.kind === 'theme'
          ? say`Ask like this (${themeNames(locale)[about.theme]}):`
          : about.command.words(locale).summary,
    ],
    working: ({ commands }, { about }) => {
      if (about === undefined)
        return [
          ...names.map(theme => {
            const [first] = of(theme, commands)
            return say`${themeNames(locale)[theme]}: ${first ? asked(first, locale) : own('')}`
          }),
          say`More of each: "${own('help charging')}", and so on.`,
        ]
      return about.kind === 'theme'
        ? of(about.theme, commands).map(command => asked(command, locale))
        : waysToAsk(about.command, locale)
    },
    next: (_, { about }) =>
      about === undefined ? names.map(name => followUp(themeNames(locale)[name], 'help', { about: name })) : [],
  }
}

const themeNames = ({ say }: Locale): Readonly<Record<Theme, Text>> => ({
  charging: say`charging`,
  sources: say`sources`,
  packs: say`packs`,
  club: say`club`,
  learning: say`learning`,
})

/** As people put it, or in notation. */
function asked({ words, examples: [example = ''] }: Entry, locale: Locale): Text {
  const { asks = [], tells = [] } = words(locale)
  return asks[0] ?? tells[0] ?? locale.own(example)
}

/** As people put it first, the grammar last. */
function waysToAsk({ name, takes, examples, words }: Entry, locale: Locale): readonly Text[] {
  const { say, own } = locale
  const { takes: described, asks = [], tells = [] } = words(locale)
  const details = Object.entries(takes).map(([option, { required, kind }]) => {
    const about = described[option]?.about ?? own('')
    return required
      ? say`${own(`${option}:`)} ${about}, such as ${own(kind.example)}`
      : say`${own(`${option}:`)} ${about}, such as ${own(kind.example)} (if you like)`
  })
  return [
    ...[...asks, ...tells].map(one => say`Ask: ${one}`),
    ...examples.map(one => say`Or written out: ${own(one)}`),
    details.length > 0 ? joined([say`Its details, by name and in any order after`, own(`"${name}"`)]) : own(''),
    ...details,
  ].filter(text => text !== '')
}
