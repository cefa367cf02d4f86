// Where a charger ends by itself: "at a twentieth of the current", "at 5 % of the current", "by its timer after 45 min".

import { type Family, none } from '../sentence/sentence.ts'

const stops = String.raw`\b(?:stops?|stopped|ends?|ended|terminat\p{L}*|finish(?:es)?|(?:cuts?|switch(?:es)?|turns?|shuts?)(?: it| itself)? (?:off|out|down))(?!\p{L})`
const near = String.raw`[^.;?!\d]{0,40}?`
const length = String.raw`(?<length>\d+(?:[.,]\d+)? ?(?:min(?:ute)?s?|h(?:ours?)?))(?!\p{L})`
const rows = [
  String.raw`${stops}${near}\b(?:an?|one) (?<share>tenth|twentieth)\b(?! of a)(?: of (?:the|its) (?:set |charge |charging )?(?:current|amps|(?<capacity>capacity)))?`,
  String.raw`terminat\p{L}*(?: current)? (?:at|with|of|is)(?: about)? (?<percent>5|10) ?%`,
  `${stops}${near}(?<share_percent>5|10) ?% of (?:the|its) (?:set |charge |charging )?(?:current|amps)`,
  String.raw`${stops}${near}\b(?:timer|clock)\b${near}\b(?:after|at|of) ${length}`,
  String.raw`\b(?:charger|it) (?<steps>steps (?:the |its )?(?:current )?down|halves (?:the|its) current)`,
  String.raw`\b(?:timer|clock) (?:(?:then|always|will|here) )?${stops}${near}\bafter ${length}`,
].map(row => new RegExp(row, 'iu'))

export const findEnds: Family = sentence => {
  const { text, isTalk } = sentence
  if (!isTalk) return none
  return rows.flatMap(row => {
    const told = row.exec(text)
    const {
      length: after_min = told?.groups?.steps && 'steps',
      share,
      capacity,
      share_percent,
      percent = share_percent,
    } = told?.groups ?? {}
    if (!told) return []
    const isTwentieth = share === 'twentieth' || percent === '5'
    const written = after_min ?? (capacity ? (isTwentieth ? 'C/20' : 'C/10') : isTwentieth ? 'a twentieth' : 'a tenth')
    return [{ kind: 'until', text: written, ...sentence.spanOf(told), score: 0.97 } as const]
  })
}
