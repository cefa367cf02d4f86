// What moderators are told of an emergency or an unsound pack.

import type { Danger } from '../../charging/situation/dangers.ts'
import type { Locale, Said } from '../../ground/locale.ts'
import { present } from '../../ground/present.ts'
import type { Text } from '../../ground/text.ts'
import { inShort } from '../../handbook/rules/card.words.ts'
import { completeReply, inLines, type Reply } from '../reply.ts'

/** Who wrote of what, and where; none of the words. */
export interface Alert {
  readonly danger: Danger
  readonly name: string
  readonly link?: string | undefined
  /** By which it was asked: whether there is a link to the answer shows later. */
  readonly way: unknown
  readonly community: string
}

/** `closed` where it goes to the owner of the club: why the room that was chosen for it gets nothing. */
export function alertReply({ danger, name }: Alert, locale: Locale, closed?: Said): Reply {
  const { say, own } = locale
  const headline = say`${kindOf(danger, locale)}: ${own(name)} tells of it. I have answered; please look after them.`
  const unheard = closed && say`The room for alerts is closed to me, so I tell you. ${closed(locale)}`
  return completeReply(
    { command: 'house show', readAs: say`what ${own(name)} wrote` },
    {
      ...inLines(present([headline, unheard])),
      cautions: [{ key: 'alert', text: say`I read words, not what happened: it may be less than that, or more.` }],
    },
    locale,
  )
}

function kindOf(danger: Danger, locale: Locale): Text {
  const { say } = locale
  if (danger === 'fire') return say`EMERGENCY, fire or smoke`
  if (danger === 'injury') return say`EMERGENCY, somebody is hurt`
  return say`Unsound pack, ${inShort(locale)[danger][1]}`
}
