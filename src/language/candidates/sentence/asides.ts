// Numbers that tell nothing of a charge: prices, dates, ages, ways to go, names, parts of a model, and how far volts lie apart.

import type { Tokens } from '../../quantities/tokens.ts'

/** Tokens from, up to, not including. */
export interface Aside {
  readonly first: number
  readonly after: number
}

const number = String.raw`\d+(?:[.,]\d+)?`
const size = String.raw`\d{1,2}(?:[.,]\d)? ?x ?\d{1,2}(?:[.,]\d+)?(?!\d|[.,]\d|s(?!\p{L}))`
const few = `(?:${number}|an?|half an|one|two|three|five|ten|fifteen|twenty|thirty)`
const month = String.raw`(?:jan|feb|mar|apr|may|june?|july?|aug|sep|oct|nov|dec)\p{L}*`
/** "May 2000 mAh" asks. */
const year = String.raw`(?:19|20)\d\d(?! ?m?ah)`
const money = String.raw`(?:€|£|\$|(?:eur|euros?|usd|dollars?|bucks|quid|chf|francs?|zl|zł)(?!\p{L}))`
const minutes = `(?:min(?:ute)?s?|h|hours?)`
const noUnit = String.raw`(?! ?(?:a|amps?|c|h|hrs?|hours?|m?ah|m|min\p{L}*|%|mm2?|k?wh?|kg|cm|s)(?!\p{L}))`
/** So far cells or packs lie apart; more is where they stand. */
const least_V = String.raw`(?:0?[.,]\d+(?: ?v(?:olts?)?(?!\p{L})|(?!\d|[.,]\d)${noUnit})|\d{1,3} ?m(?:v|illivolts?)(?!\p{L}))(?:(?: per| a| each) cell| each)?`
/** No more than packs may lie apart, in words. */
const spelled_V = `(?:a tenth|(?:(?:an?|one|two|three|four|five|half an?|a few) )?hundredths?)(?: of)?(?: a)? volts?`
const between = `(?:(?:the|them|all|packs?|cells?|volts?|voltage|is|are|was|by|of|to|between|only|about|just|under|below|less|more|than|up|at|most|roughly|around|max|one|another) )*`

const priced: readonly string[] = [
  // "35 €", "paid 35", "costs about 49.90".
  `${money} ?${number}|${number} ?${money}`,
  String.raw`(?:costs?|paid|priced? at|worth)(?: (?:me|us|was|is|about|only|just|over|under|almost))* ${number}(?! ?[\p{L}%°])`,
]
const rows: readonly string[] = [
  // "3.5.2024", "2024-05-03", "3rd of May", "May 2024".
  String.raw`\d{1,2}([./-])\d{1,2}\1(?:19|20)\d\d|(?:19|20)\d\d-\d\d-\d\d`,
  String.raw`\d{1,2}(?:st|nd|rd|th)?\.? (?:of )?${month} ${year}|\d{1,2}(?:st|nd|rd|th) (?:of )?${month}|${month} (?:\d{1,2}(?:st|nd|rd|th)|${year})`,
  // "I am 14", "aged 70".
  String.raw`(?:(?:i am|i'm|im|he is|he's|she is|she's)(?: (?:only|just|now))?|aged?) \d{1,2}(?= (?:and|so|but|years?|yrs?|now)\b|[,.;!?)]|$)`,
  // "Heat 3", "race no 44": what bears a number.
  String.raw`(?:heat|race|group|lane|gate|bay|pilot|number|no\.?|nr\.?|#) ?\d{1,3}(?![.,]?\d| ?(?:m?a|m?v|s|c|%|°|x|cells?|degrees?|packs?|amps?|volts?|min\p{L}*)(?!\p{L}))(?!\p{L})`,
  // "Pack 1: 3S 2200, pack 2: 3S 1800".
  String.raw`(?:pack|battery|charger|board|plane|model) ?[1-9](?= ?(?:[:=,.;)?!-]|is\b|at\b|has\b|and\b|or\b|reads?\b|shows?\b|$))(?![.,]\d)`,
  // "Prop 8x4.5", "2300 kv", "a 60 A ESC".
  String.raw`(?:props?|propell?ers?)(?: (?:is|are|of|size|with|an?))* ${size}|${size} ?(?:props?|propell?ers?|inch)(?!\p{L})`,
  String.raw`\d{3,5} ?kv(?!\p{L})|(?:esc|bec)(?: (?:is|has|does|of|with|an?|rated))* ${number} ?[av](?!\p{L})|${number} ?[av](?:mps?|olts?)? (?:esc|bec)(?!\p{L})`,
  // "20 km", "5 minutes away", "ten minutes from the field".
  String.raw`${number} ?(?:km|kilomet(?:er|re)s?|miles?)(?!\p{L})`,
  String.raw`${few}[ -]?${minutes}[ -](?:away|walk|drive|ride|on foot|by (?:car|bike|bus|foot|train)|down the (?:road|street)|from (?:the|my|our|here|home|there|town))(?!\p{L})`,
  // "Within 0.02 V", "differ by 40 mV", "0.3 V apart".
  String.raw`(?:within|differ\p{L}*|spread|gap|delta|deviat\p{L}*|imbalance|agree)\p{L}* ${between}(?:${least_V}|${spelled_V})`,
  String.raw`(?:${least_V}|\d(?:[.,]\d+)? ?v(?:olts?)?)(?: or so)?(?: of)? (?:apart|difference|different|spread|gap|between (?:them|the|packs|cells)|from each other|of each other|higher than|lower than|off)(?!\p{L})`,
]
const whole = (all: readonly string[]) => new RegExp(String.raw`(?<![\p{L}\d.,])(?:${all.join('|')})`, 'giu')
const [every, unpriced] = [whole([...rows, ...priced]), whole(rows)]
/** Where electricity is paid a price is what is asked about. */
const electricity = /kwh|kilowatt|tariff|electric|\bbills?\b/i

export function asidesIn(tokens: Tokens): readonly Aside[] {
  const { text } = tokens
  if (!/\d|\b(?:minute|hour|tenth|hundredth)/i.test(text)) return []
  return [...text.matchAll(electricity.test(text) ? unpriced : every)].map(aside => tokens.spanOf(aside))
}
