// "What if I add a third charger", "and if one charger dies", "we only get two of the chargers", behind a question about
// several: one more of them, one less, or so many.

import { numberNamed } from '../../quantities/quantities.ts'
import { fitTo, type Kept } from '../../reading/fit.ts'
import { alike } from '../../reading/told/charger-told.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'

const thing = '(?:charger|outlet|port|output|channel)s?'
const more = new RegExp(String.raw`\b(?:second|third|fourth|fifth|another|one more|extra) ${thing}\b`, 'i')
const less = new RegExp(
  String.raw`\b(?:one|a|my other|the (?:second|third|fourth|other)) ${thing} (?:dies|died|fails|failed|breaks|broke|quits?|packs up|is (?:dead|broken|gone|out)|less|fewer)\b|\b(?:without|lose|lost) (?:one|a|the (?:second|third|other)) ${thing}\b|\bone (?:less|fewer) ${thing}\b`,
  'i',
)
const exactly = new RegExp(
  String.raw`\b(?:only|just|get|got|have|has|with|use|using|are) (?:only |just |got )*(\w+) (?:of (?:the|my|our|those|these) )?(?:\w+ )?${thing}\b`,
  'i',
)
const most = 12

/** So many that there are now; undefined where the text tells no number of them. */
function told(text: string): number | undefined {
  const [, number = ''] = exactly.exec(text) ?? []
  const value = numberNamed(number.toLowerCase()) ?? Number(number)
  return Number.isInteger(value) && value > 0 ? value : undefined
}

export const chargersAnew: Way = ({ text, values, frame: { question, pending } }, command) => {
  const { ports, chargers } = question.options
  const { count, one } = alike(chargers)
  const step = less.test(text) ? -1 : more.test(text) ? 1 : 0
  const before = Number(ports ?? (one === undefined ? 0 : Number.parseInt(count || '1', 10)))
  const now = step === 0 ? (told(text) ?? before) : before + step
  // What is told of them beside is another thing, or another charger.
  const isOther = values.some(({ kind, text: of }) => kind !== 'count' && kind !== 'number' && of !== '1')
  if (now === before || before === 0 || now < 1 || now > most || pending || isOther) return undefined
  const anew: Kept = ports === undefined ? { chargers: now === 1 ? `${one}` : `${now}x ${one}` } : { ports: `${now}` }
  const kept = { ...question.options, ...anew }
  return choiceOf(fitTo(command, [], kept), kept)
}
