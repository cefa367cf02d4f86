// Whose kit it is, in words.

import type { OptionWords } from '../../src/assistant/command.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import type { Owner } from '../../src/memory/owner.ts'

const forWhom =
  ({ say }: Locale) =>
  (whose: Text): Text =>
    (whose as string) === 'me' ? say`for you` : say`for the club`

/** Where a kit is looked at. */
export const whoseSeen = (locale: Locale): OptionWords => ({
  about: locale.say`me or club; both if you say nothing`,
  as: forWhom(locale),
})

/** Where a kit is changed. */
export const whoseChanged = (locale: Locale): OptionWords => ({
  about: locale.say`me (if you say nothing) or club, which only moderators change`,
  as: forWhom(locale),
})

export const inWhoseKit = ({ scope }: Owner, { say }: Locale): Text =>
  scope === 'person' ? say`in your kit` : say`in the club's kit`

/** For a name that the owner has not saved: nothing is changed. */
export const noSuchEntry = (name: string, owner: Owner, locale: Locale): Text =>
  locale.say`There is no "${locale.own(name)}" ${inWhoseKit(owner, locale)}, so nothing was changed.`

export function whereNamesAre({ scope }: Owner, { say, own }: Locale): readonly (Text | undefined)[] {
  return [
    say`"${own('kit list')}" shows every name.`,
    scope === 'person' ? say`One of the club's is meant with "${own('for: club')}".` : undefined,
  ]
}
