// What a question tells of dangers, put beside what was told before it: what is left of that, and of which packs.

import { type Danger, dangers } from '../../charging/situation/dangers.ts'
import { shortened } from '../../ground/plain-text.ts'
import { asksLeaveAt } from '../../handbook/leave.ts'
import { correctionsIn } from '../../language/dangers/corrections.ts'
import type { ToldDanger } from '../../language/dangers/index.ts'
import type { StayingDanger } from '../../language/frames/staying.ts'
import {
  corrected,
  lastSpoken,
  namedBy,
  noted,
  spokenPacks,
  staying,
  together,
} from '../../language/frames/told-dangers.ts'
import { writeQuestion } from '../../language/sentence/question.ts'
import type { KitEntry } from '../../memory/kit.ts'
import type { Context } from '../context.ts'
import { noteIt } from '../kit/kit.words.ts'
import type { FollowUp } from '../reply.ts'
import type { Around, Conversation } from './around.ts'

type Told = Pick<ToldDanger, 'danger' | 'typed'> & Partial<ToldDanger>

const packsOf = (used: readonly KitEntry[]): readonly KitEntry[] => used.filter(({ kind }) => kind === 'pack')
export const packNames = (used: readonly KitEntry[]): readonly string[] => packsOf(used).map(({ name }) => name)

/** A pack in particular, one's own or one that was spoken of. */
const definite = /\b(?:my|mine|our|ours|his|her|its|their|it|this|that|the|these|those|he|she)\b/i

/** `text` has what saved names stand for in their place, which may be a word of anything in what was `typed`. */
export function remember(
  conversation: Conversation,
  text: string,
  told: readonly Told[],
  used: readonly KitEntry[],
  suspected: readonly Danger[] = [],
  typed = text,
) {
  const { frame, told: before } = conversation.talk
  const lasting = suspected.filter(danger => dangers[danger].stays !== 'once')
  if (before.length + told.length + lasting.length === 0) return { kept: [], isCorrected: false, isOfStanding: false }
  const said = correctionsIn(typed)
  const [spoken, last] = [spokenPacks(text, packsOf(used)), lastSpoken(frame)]
  const left = corrected(before, said, spoken, last)
  const isGeneral = !definite.test(text) && last === undefined
  const telling = { spoken, last, said, isAsked: (at: number) => asksLeaveAt(text, at), isGeneral }
  const kept = together(left, staying(told, telling))
  // What it may only tell is spoken of now, and stays as a doubt of the pack.
  const may = staying(
    lasting.map(danger => ({ danger, typed: shortened(text) })),
    telling,
  ).filter(one => !kept.some(({ danger }) => danger === one.danger))
  conversation.keepTold(
    together(
      kept,
      may.map(one => ({ ...one, doubted: true, suspected: true })),
    ),
  )
  return {
    kept,
    /** It corrected something that was told. */
    isCorrected: left.some((one, index) => one !== before[index]) || left.length < before.length,
    /** It speaks of something that was told and still stands. */
    isOfStanding: left.some(({ danger, doubted }) => !doubted && (said.isWish || said.otherwise.has(danger))),
  }
}

export type Remembered = ReturnType<typeof remember>

/** Those of the packs that are asked about: by the names that they have in the kit, or all where none is named. */
export function keptFor(
  kept: readonly StayingDanger[],
  { conversation }: Around,
  question: { readonly options: Readonly<Record<string, string>> },
  used: readonly KitEntry[],
): { readonly kept: readonly StayingDanger[]; readonly names: readonly string[] } {
  const { frame } = conversation.talk
  const named = packNames(used)
  const isSame = named.length === 0 && frame !== undefined && frame.question.options.pack === question.options.pack
  const names = isSame ? frame.names : named
  return { kept: [...namedBy(kept, names), ...noted(used)], names }
}

/** For packs of the kit that may be changed here: to note what was told, so that it holds for everybody. */
export function notesOffered(
  told: readonly StayingDanger[],
  used: readonly KitEntry[],
  { asker, locale }: Context,
): readonly FollowUp[] {
  return packsOf(used).flatMap(({ name, notation, note, owner }) => {
    const one = told.find(
      ({ danger, names, doubted }) => dangers[danger].stays === 'lasts' && names.includes(name) && !doubted,
    )
    const isOfClub = owner.scope === 'community'
    if (!one || note || (isOfClub && !asker.moderates)) return []
    const saved = { name, pack: notation, note: one.danger }
    const options = isOfClub ? { ...saved, for: 'club' } : saved
    return [{ label: noteIt(name, locale), question: writeQuestion({ command: 'kit save', options }) }]
  })
}
