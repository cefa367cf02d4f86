// What a digest says.

import type { Locale } from '../../ground/locale.ts'
import { present } from '../../ground/present.ts'
import { joined, type Text } from '../../ground/text.ts'
import type { Noticed } from '../../memory/noticed.ts'
import { completeReply, type Reply } from '../reply.ts'
import { idleCaution } from '../verdict.words.ts'

/** By the families of dangers, and what numbers alone refuse. */
const families = ({ say }: Locale): Readonly<Record<string, Text>> => ({
  fire: say`fire or smoke`,
  injury: say`injuries`,
  hurt: say`packs that are hurt`,
  look: say`packs to be looked at first`,
  warmth: say`heat and cold`,
  watch: say`nobody with the charge`,
  place: say`where it is charged`,
  setting: say`how it is connected and set`,
  numbers: say`numbers out of limits`,
})

export function digestReply(all: readonly Noticed[], locale: Locale): Reply {
  const { say, show, own } = locale
  const of = (kind: Noticed['kind']) => all.filter(one => one.kind === kind)
  const count = (some: readonly unknown[]) => show.number(some.length, 0)
  const [refused, unread, wrong] = [of('refused'), of('not understood'), of('wrong')]
  const headline = say`The last seven days here: ${count(refused)} refused, ${count(unread)} not understood, ${count(wrong)} marked wrong.`
  const names = families(locale)
  const byFamily = [...Map.groupBy(refused, ({ about }) => about)]
    .toSorted(([, a], [, b]) => b.length - a.length)
    .map(([about, some]) => say`${names[about] ?? own(about)} ${count(some)}`)
  const more = present([
    byFamily.length > 0 ? say`Refused: ${joined(byFamily, ', ')}.` : undefined,
    unread.length + wrong.length > 0 ? say`Linked: the last not understood, then the last marked wrong.` : undefined,
  ])
  return completeReply(
    { command: 'house show', readAs: say`the digest of this club` },
    { headline: joined([headline, ...more]), lines: [headline, ...more], cautions: [idleCaution(locale)] },
    locale,
  )
}
