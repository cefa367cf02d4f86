// Whether somebody wants to be told when a charge is done.

import { conceptsIn } from '../../model/concepts.ts'

const whenDone =
  /\b(?:when|once|as soon as|after|if)\b.*\b(?:done|full|ready|over|finish\w*|complete\w*|charged|through|there|time)\b|\bthen\W*$|\bthen[,.;!]/i
const tells =
  /\b(?:(?:tell|message|text|warn|call|notify|alert) me|let me know|give (?:me|us) a (?:shout|call|ping|nudge|buzz))\b/i

export const asksReminder = (text: string): boolean =>
  (tells.test(text) || conceptsIn(text).includes('remind')) && whenDone.test(text)
