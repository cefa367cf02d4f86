// What a conversation is about, in words of the handbook: what it was asked last, or what the last answer was on.

import { readTemperature } from '../quantities/quantities.ts'
import type { Talk } from './frame.ts'

/** Of what changes something in the club, and who may. */
export const ofChanges = 'moderators'

/** Of the commands whose answers raise questions of their own. */
const themes: Readonly<Record<string, string>> = {
  storage: 'storage',
  parallel: 'parallel board',
  cells: 'cells apart balance',
  health: 'internal resistance',
  lead: 'wire lead',
  travel: 'flight cabin luggage',
  source: 'source battery',
  'house set': ofChanges,
}

/** Undefined where nothing was spoken of that the handbook has words for. */
export const themeOf = ({ about, frame }: Talk): string | undefined => about ?? themes[frame?.question.command ?? '']

/** "3°C": where nothing else is asked of it, whether cells so warm are charged. */
export const themeOfWarmth = (temperature: string): string =>
  readTemperature(temperature) < 10 ? 'charging in the cold' : 'charging on a hot day'
