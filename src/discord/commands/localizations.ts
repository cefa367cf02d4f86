// The names and descriptions of commands and options in other languages, by Discord's locale codes. English only today.

import type { LocalizationMap } from 'discord.js'

/** For a locale, the English text and its translation: { de: { time: 'dauer' } }. */
export type Localizations = Readonly<Record<string, Readonly<Record<string, string>>>>
export const localizations: Localizations = {}

/** The translations of one text, or undefined where there is none. */
export function translationsOf(text: string, table: Localizations): LocalizationMap | undefined {
  const found = Object.entries(table).flatMap(([locale, words]) => {
    const translation = words[text]
    return translation === undefined ? [] : [[locale, translation] as const]
  })
  return found.length > 0 ? (Object.fromEntries(found) as LocalizationMap) : undefined
}
