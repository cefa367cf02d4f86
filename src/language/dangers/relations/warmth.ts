// Degrees that are told beside words of heat and cold: they show whether it is so.

import { type Told, textOf } from './relation.ts'

/** The last degree at which cells may be charged, less and less current from 40 °C on: the core judges that. */
const warmest_C = 45
const heat = /^(?:too|hot|hotter|burn|boil|roast|scorch|overheat|steam|cant|cannot|hardly|barely)/

/** Of a pack just flown: inside it is hotter than where it is touched. */
const warmestFlown_C = 40
const flown = /^(?:flight|flights|landing|landed|flown|flying)$/

/** Whether degrees are told that no cell is hot at, and nothing that one cannot hold. */
export const isMild = (told: Told): boolean =>
  isEvery(told, value => value <= (says(told, flown) ? warmestFlown_C : warmest_C)) && !says(told, heat)

/** From here on cells take their usual current. */
const coolest_C = 10
const cold = /^(?:freez|frozen|frost|ice|icy|snow|below|minus)/

/** "In from the cold car, it is 21 degrees in here": those of the room. */
export const comesFromCold = (text: string): boolean => fromCold.test(text)
const fromCold = /\bfrom (?:\w+ ){0,2}(?:cold|icy|unheated|freez\w*)\b/i

/** Whether degrees are told that no cell is cold at, and nothing that is frozen, nor comes from the cold. */
export const isWarm = (told: Told): boolean =>
  isEvery(told, value => value >= coolest_C) && !says(told, cold) && !comesFromCold(textOf(told.marked.words))

/** "Outside -8, but the pack lay in the room at 21": those of the air out there are none of the pack. */
function isEvery({ values, marked: { words } }: Told, holds: (value_C: number) => boolean): boolean {
  const degrees = values.filter(({ kind }) => kind === 'celsius')
  const ofPack = degrees.filter(({ from }) => !words.slice(Math.max(0, from - 2), from).some(({ w }) => out.test(w)))
  return ofPack.length > 0 && ofPack.every(({ value }) => holds(value))
}
const out = /^(?:outside|outdoors|weather|street)$/

const says = ({ marked: { words } }: Told, what: RegExp): boolean => words.some(({ w }) => what.test(w))

/** In C: rates from here on are those of labels, and of the weather. */
const leastAir_C = 12

/** "It's 33C here": the air, and no rate. */
export const isAirWarm = ({ marked: { words }, values }: Told): boolean =>
  values.some(
    ({ kind, value, to }) =>
      kind === 'rate' && value >= leastAir_C && /^(?:here|today|tonight)$/.test(words[to]?.w ?? ''),
  ) &&
  values.filter(({ kind }) => kind === 'rate').length === 1 &&
  !words.some(({ w }) => /^(?:charg\w*|label|sticker|amps?|put|rated)$/.test(w))
