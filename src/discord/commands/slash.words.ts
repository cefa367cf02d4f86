// What Discord's menu says of what is there besides the commands.

import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'

export const aboutAsk = ({ say }: Locale): Text => say`Ask anything about charging, in your own words`
export const aboutQuestion = ({ say }: Locale): Text =>
  say`Your question; names of your kit and your last packs are offered`
/** In the menu of a message, 32 characters at most. */
export const askAboutMessage = ({ say }: Locale): Text => say`Ask the chargehand`

export const aboutPrivate = ({ say }: Locale): Text => say`Whether only you see the answer`
/** Of the asker's own things they see the answer alone unless they say otherwise. */
export const aboutPrivateOwn = ({ say }: Locale): Text =>
  say`Whether only you see the answer: so it is unless you choose False`

/** What the commands of a family are about; undefined where they say it themselves. */
export const aboutFamily = (family: string, { say }: Locale): Text | undefined =>
  ({
    charge: say`The current, time and plan of a charge`,
    care: say`Storage, cells, age, cutoffs and travel of packs`,
    supply: say`What feeds a charger: supplies, batteries, leads`,
    kit: say`Packs, chargers and sources saved by name`,
    log: say`The charges of your packs`,
    remind: say`Reminders while a pack charges`,
    learn: say`The handbook and the lessons`,
    club: say`The limits and rules of this club, and who changed them`,
    answer: say`The standard answers of this club`,
    me: say`What I keep about you`,
  })[family]
