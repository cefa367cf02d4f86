// That there is no charger, and something else is to fill the pack.

import { namesLoad } from '../../parts/loads.ts'
import { type Relation, type Told, textOf } from './relation.ts'

const isAbsent =
  /\b(?:forg[oe]t\w*|lost|lack|lent|without|no|havent(?: got)?|dont have|missing)\b(?: (?:my|the|our|a|any|proper|real|lipo|balance|normal|to bring|to pack))* chargers?\b(?! (?:leads?|cables?|plugs?))|\b(?:left|leave) (?:my|the|our) chargers? (?:at |back )?(?:home|behind)\b|\bchargers? (?:is |has |was |just |got )*(?:died|dead|broke|broken|bust|kaput\w*|gone|lost|stolen|at home|not here|left at home|blew up|gave up)\b/
const fills = /\b(?:charg(?:e|es|ing)|fill|top|connect|hook|wire|put|use|using|run|instead)\b/
const others =
  /\b(?:another|other|new|buy|borrow|spare|second|club|mates|friends|lend|next) (?:\w+ )?(?:chargers?|one)\b|\b(?:buy|borrow|bought)\b/

/** "Forgot my charger, can I fill it from a supply": nothing would stop that at full. */
export const withoutCharger: Relation = told => {
  const { words } = told.marked
  const text = textOf(words)
  const hasSource = told.has('supply') || told.has('carBattery') || told.has('panel') || usb.test(text)
  const charger = words.findIndex(({ w }) => /^chargers?$/.test(w))
  if (!hasSource || !isAbsent.test(text) || others.test(text)) return undefined
  const isFilled = fills.test(text.replace(isAbsent, ''))
  return isFilled ? { danger: 'noCharger', from: charger, to: charger + 1 } : undefined
}
const usb = /\b(?:usb|powerbank|power bank|socket)\b/

/** "Hang a lamp straight on the pack": it takes from the pack, and nothing is told that would fill it. */
export const isLoad = (told: Told): boolean =>
  namesLoad(textOf(told.marked.words)) && !['supply', 'carBattery', 'panel'].some(concept => told.has(concept))
