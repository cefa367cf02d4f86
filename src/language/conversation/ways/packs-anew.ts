// "The pink one's coming off", "a fourth turned up, same pack", behind packs that are all alike: one less of them, or one more.

import { fitTo } from '../../reading/fit.ts'
import { keptEntries } from '../../reading/kept-list.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'

const ordinals = ['second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth']
const others = '(?! (?:charger|outlet|port|output|channel|board|supply|battery|flight|time|question))'
const nth = new RegExp(String.raw`\b(?:a|the) (${ordinals.join('|')})\b${others}`, 'i')
const more = new RegExp(String.raw`\b(?:one more|another (?:one|of (?:them|those|these|the same)))\b${others}`, 'i')
const less = new RegExp(
  String.raw`\b(?:one|the \w+ one|the \w+|that one)(?:'s| is| has)? (?:coming|come|comes|taken|going|goes|pulled) off\b|\b(?:take|pull|leave|drop) (?:one|the \w+ one) (?:off|out)\b|\b(?:one (?:less|fewer)|without one|without the \w+ one)\b${others}`,
  'i',
)
const most = 24
const sameVolts = /\bsame (?:volts?|voltage|level|state|charge)\b/i
const plain: ReadonlySet<string> = new Set(['count', 'number', 'board'])
const differs =
  /\b(?:full|empty|flat|old\w*|new\w*|used|other|different|mine|bigger|smaller|puff\w*|swoll\w*|\d+s)\b|\d[.,]\d/i

export const packsAnew: Way = ({ text, values, frame: { question, pending } }, command) => {
  const { packs } = question.options
  const [all, ...kinds] = packs === undefined ? [] : keptEntries(packs)
  const ordinal = nth.exec(text)?.[1]?.toLowerCase()
  // "A fourth" is no share.
  const isOrdinal = (typed: string) => ordinal !== undefined && typed.toLowerCase().endsWith(ordinal)
  // Where it stands, or that it is another one, is told besides.
  const isOther = values.some(({ kind, typed }) => !plain.has(kind) && !isOrdinal(typed)) || differs.test(text)
  if (!packs || !all || kinds.length > 0 || pending || isOther) return undefined
  const now = ordinal
    ? ordinals.indexOf(ordinal) + 2
    : more.test(text)
      ? all.count + 1
      : less.test(text)
        ? all.count - 1
        : all.count
  // A third is one of four that were there.
  if (now === all.count || now < 1 || now > most || (ordinal && now !== all.count + 1)) return undefined
  const alike = (count: number) => (count === 1 ? all.text : `${count}x ${all.text}`)
  const { pack, current, level } = all
  // Where one that joins them stands is not said by where the others do.
  const isOpen = now > all.count && level !== undefined && !sameVolts.test(text)
  const joining = current === undefined ? pack : `${pack} at ${current}`
  const kept = { ...question.options, packs: isOpen ? `${alike(all.count)}; ${joining}` : alike(now) }
  return choiceOf(fitTo(command, [], kept), kept)
}
