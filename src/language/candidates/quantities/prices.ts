// What a kilowatt-hour costs.

import { wordSet } from '../../../ground/word-set.ts'
import { type Found, none, type Sentence } from '../sentence/sentence.ts'

const paid = wordSet('electric electricity power current strom energy kwh unit units bill tariff meter')
/** "What does it cost at 30ct": nothing else that is asked about costs so little. */
const [costs, small] = [wordSet('cost costs'), /^(?:cents?|ct|p|pence)$/]
const money = /^(?:cents?|ct|c|p|pence|penny|pennies|€|\$|£|euros?|dollars?|pounds?|francs?|chf|kr|zł|zl)$/

/** "30 cents a kWh", "0.28 per kWh", "30p/kwh". */
export function priceAt(sentence: Sentence, first: number): readonly Found[] {
  const numeral = sentence.numerals[first]
  if (!numeral || numeral.needsUnit) return none
  const isNamed = money.test(sentence.word(numeral.after))
  const found = (name: string, after: number, score: number): readonly Found[] => [
    { kind: 'price', text: `${numeral.decimal} ${name}/kWh`, first, after, score },
  ]
  // "When a kWh costs 0.30", "38 cents": where nothing but electricity is paid.
  const isOfWhole = [1, 2, 3].some(back => sentence.word(first - back) === 'kwh')
  const named = isNamed ? sentence.word(numeral.after) : ''
  const isPaid = sentence.mentions(paid) || (small.test(named) && sentence.mentions(costs))
  if (isOfWhole || (isNamed && named.length > 1 && isPaid)) return found(named, numeral.after + (isNamed ? 1 : 0), 0.9)
  const per = numeral.after + (isNamed ? 1 : 0)
  if (!/^(?:per|a|an|the|each|\/|for)$/.test(sentence.word(per))) return none
  const unit = /^(?:1|one|a)$/.test(sentence.word(per + 1)) ? per + 2 : per + 1
  const isWhole = sentence.word(unit) === 'kwh'
  if (!isWhole && !/^kilowatt$|^kw$/.test(sentence.word(unit))) return none
  const before = isNamed || !money.test(sentence.word(first - 1)) ? undefined : sentence.word(first - 1)
  return found(before ?? named, isWhole ? unit + 1 : unit + 2, 0.96)
}
