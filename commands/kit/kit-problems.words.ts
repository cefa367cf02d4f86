// Whose kit it is, in words, and what is said where it cannot be changed as it was asked.

import type { OptionWords } from '../../src/assistant/command.ts'
import { type Locale, told } from '../../src/ground/locale.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { Text } from '../../src/ground/text.ts'
import type { KitEntry } from '../../src/memory/kit.ts'
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

const example = 'kit save name: wren pack: 3S 720 LiHV'

export const onlyModeratorsChange = new Problem({
  final: true,
  what: ({ say }) => say`Only moderators change the club's kit.`,
  token: 'club',
  expected: ({ say, own }) => say`"${own('for: me')}", which is your own kit, or ask a moderator`,
  example: 'kit list',
})

export const removesEntry = told((locale, { name, notation, owner }: KitEntry) => {
  const { say, own } = locale
  return say`Remove ${own(name)} (${own(notation)})? It is ${inWhoseKit(owner, locale)}.`
})

export const replacesEntry = told((locale, { name, notation, owner }: KitEntry, instead: string) => {
  const { say, own } = locale
  return say`${own(name)} stands for ${own(notation)} ${inWhoseKit(owner, locale)}. Shall it be ${own(instead)}?`
})

export const takenName = (name: string, owner: Owner): Problem =>
  new Problem({
    what: locale => locale.say`There is a "${locale.own(name)}" ${inWhoseKit(owner, locale)} already.`,
    token: name,
    expected: ({ say }) => say`a name that is not taken, or remove the other first`,
    example: `kit remove name: ${name}`,
  })

export const oneThing = (given: number): Problem =>
  new Problem({
    what: ({ say }) => (given > 0 ? say`A name stands for one thing.` : say`I need to know what the name stands for.`),
    expected: ({ say, own }) => say`one of ${own('pack, charger, source')}`,
    example,
  })

export const fullKit = (most: number, owner: Owner): Problem =>
  new Problem({
    what: locale =>
      locale.say`There are ${locale.show.number(most, 0)} entries ${inWhoseKit(owner, locale)}; no more fit.`,
    expected: ({ say }) => say`a name that is saved already, or remove one first`,
    example: owner.scope === 'person' ? 'kit remove name: wren' : 'kit remove name: wren for: club',
  })
