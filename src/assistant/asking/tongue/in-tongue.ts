// A reply to a question that is not in English: the refusal, or how much of it was read, in the asker's language.

import { dangers } from '../../../charging/situation/dangers.ts'
import { joined, type Text } from '../../../ground/text.ts'
import { familyOf, type TongueText, textIn } from '../../../handbook/tongues.ts'
import type { ToldDanger } from '../../../language/dangers/index.ts'
import type { Language } from '../../../language/tongues/tongue.ts'
import { withLine } from '../../layers/other-lines.ts'
import { inLines, type Reply } from '../../reply.ts'
import { exampleOf, inEnglish } from './in-tongue.words.ts'

/** The most pressing first. */
const order = Object.keys(dangers)

/** `told` are the dangers that the question told. */
export function inTongue(reply: Reply, language: Language, told: readonly Pick<ToldDanger, 'danger'>[]): Reply {
  if (language === 'en') return reply
  const { locale, command, verdict, problem, readAs, figures, understood } = reply
  const say = (text: TongueText, behind?: Text): Text =>
    language === 'other' ? inEnglish(text, behind, locale) : joined([locale.own(textIn(language, text)), behind])
  const [danger] = told.map(one => one.danger).toSorted((a, b) => order.indexOf(a) - order.indexOf(b))
  const family = danger && familyOf(danger)
  // What is to be looked at first may turn out too bad for that.
  const refused = family === 'look' ? 'hurt' : (family ?? 'refused')
  if (family || verdict === 'do not charge')
    return opened(reply, say(verdict === 'do not charge' ? refused : (family ?? refused)))
  const pack = understood?.values.find(({ kind }) => kind === 'pack')?.text
  const needsEnglish = () => say('english', exampleOf(pack, locale))
  if (problem) return opened(reply, needsEnglish())
  return withLine(reply, figures.length > 0 || command === 'handbook' ? say('partly', readAs) : needsEnglish())
}

/** With a line before all others. */
const opened = (reply: Reply, first: Text): Reply => ({
  ...reply,
  ...inLines([first, ...reply.lines]),
  leads: reply.leads + 1,
})
