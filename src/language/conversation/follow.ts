// What a message makes of the question before it: the ways of going on, of which the first that holds is meant.

import { lihv, lipo } from '../../charging/things/chemistries.ts'
import { attempt } from '../../ground/problem.ts'
import type { Choice } from '../reading/choose.ts'
import { fitTo } from '../reading/fit.ts'
import { toldBy } from '../reading/told/told-pack.ts'
import { readPairs } from '../sentence/option-pairs.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'
import type { Behind, Way } from './behind/behind.ts'
import { choiceOf } from './behind/choice-of.ts'
import { answerTo } from './ways/answer-to.ts'
import { asksQuantity } from './ways/asks-quantity.ts'
import { beyondFull } from './ways/beyond-full.ts'
import { both } from './ways/both.ts'
import { withChange } from './ways/change.ts'
import { chargersAnew } from './ways/chargers-anew.ts'
import { compares } from './ways/compares.ts'
import { flown } from './ways/flown.ts'
import { howMany } from './ways/how-many.ts'
import { inTime } from './ways/in-time.ts'
import { packsAnew } from './ways/packs-anew.ts'
import { putBack } from './ways/put-back.ts'
import { reminds } from './ways/reminds.ts'
import { remindsAnew } from './ways/reminds-anew.ts'
import { ruleAnew } from './ways/rule-anew.ts'
import { several } from './ways/several.ts'
import { stays } from './ways/stay.ts'

const ways: readonly Way[] = [
  beyondFull,
  howMany,
  packsAnew,
  asksQuantity,
  compares,
  reminds,
  remindsAnew,
  flown,
  putBack,
  both,
  chargersAnew,
  several,
  inTime,
  stays,
  answerTo,
  // "Current: 2A", in notation.
  ({ text, frame: { question } }, command) => {
    const written = attempt(() => readPairs(text, command, true))
    return written?.before === ''
      ? choiceOf(fitTo(command, [], { ...question.options, ...written.options }), {})
      : undefined
  },
  ruleAnew,
  withChange,
]

const plainOne =
  /\b(?:normal|ordinary|regular|standard|common) (?:one|ones|pack|packs|battery|batteries|type|sort|kind)\b/i

/** "And a normal one?" behind LiHV: its commoner sister is meant. */
function withPlainType({ text, values, frame: { question } }: Behind): Behind['values'] {
  const { pack, packs = pack, chemistry = packs } = question.options
  const [typed] = plainOne.exec(text) ?? []
  const isTold = values.some(value => toldBy(value)?.chemistry !== undefined)
  if (!typed || isTold || !chemistry?.includes(lihv.name)) return values
  const start = text.indexOf(typed)
  return [...values, { kind: 'chemistry', text: lipo.name, typed, start, end: start + typed.length, score: 1 }]
}

/** The question that comes of it; undefined where the message begins anew. */
export function followUp(said: Behind): Choice | undefined {
  const values = withPlainType(said)
  const behind = values === said.values ? said : { ...said, values, readBy: () => ({ values, free: {} }) }
  const command = behind.vocabulary.find(({ name }) => name === behind.frame.question.command)
  for (const way of command ? ways : []) {
    const choice = way(behind, command as CommandWords)
    if (choice) return choice
  }
  return undefined
}
