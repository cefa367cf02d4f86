// What is said where the kit cannot be changed as it was asked.

import { told } from '../../src/ground/locale.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { KitEntry } from '../../src/memory/memory.ts'
import type { Owner } from '../../src/memory/owner.ts'
import { inWhoseKit } from './kit-owner.words.ts'

const example = 'kit save name: wren pack: 3S 720 LiHV'

export const onlyModeratorsChange = new Problem({
  what: ({ say }) => say`Only moderators change the club's kit.`,
  token: 'club',
  expected: ({ say, own }) => say`"${own('for: me')}", which is your own kit, or ask a moderator`,
  example: `${example} for: me`,
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
