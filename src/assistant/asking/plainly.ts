// A plain sentence: its dangers, the saved names in it, and what is meant by the rest.

import type { Danger } from '../../charging/situation/dangers.ts'
import { present } from '../../ground/present.ts'
import { askedOf } from '../../handbook/asked.ts'
import { bestCover, candidatesOf } from '../../language/candidates/index.ts'
import { goesOn, isOnlyValues } from '../../language/conversation/behind/follow-up.ts'
import { heardInTalk } from '../../language/conversation/heard/heard-in-talk.ts'
import { readPlainly } from '../../language/conversation/read-plainly.ts'
import { type DangersIn, dangersIn, dangersInGloss } from '../../language/dangers/index.ts'
import type { Frame, Talk } from '../../language/frames/frame.ts'
import { themeOf, themeOfWarmth } from '../../language/frames/theme.ts'
import { knownShare } from '../../language/model/index.ts'
import type { Meant } from '../../language/reading/meant.ts'
import { warmthToCharge } from '../../language/reading/stands.ts'
import { glossed } from '../../language/tongues/gloss.ts'
import { isReadInPart, type Language } from '../../language/tongues/tongue.ts'
import type { KitEntry } from '../../memory/kit.ts'
import type { StandardAnswer } from '../../memory/standard-answer.ts'
import type { Context } from '../context.ts'
import { namesReplaced } from '../kit/kit-names.ts'
import { answerCalled } from '../naming/deeds.ts'
import { freeDetails, type ToldFreely } from '../naming/free-details.ts'
import { besideDeeds, deedsIn } from '../naming/verbs.ts'
import type { Registry } from '../registry.ts'
import { withThoseOf } from './danger-first.ts'
import { thanks } from './of-before.ts'
import { asTyped, readForeign } from './tongue/read-foreign.ts'

export interface Heard {
  readonly meant: Meant
  readonly dangers: readonly Danger[]
  /** Dangers that it may well tell: never a plain go. */
  readonly suspected: readonly Danger[]
  /** What the handbook is asked; absent where it has nothing on that. */
  readonly about: string | undefined
  /** Verbs and names tell what is wanted, whatever the words sound like. */
  readonly isSure: boolean
  /** It goes on from what the handbook was asked before. */
  readonly isOfTheme: boolean
  /** The saved things that were named. */
  readonly used: readonly KitEntry[]
  readonly answers: readonly StandardAnswer[]
  readonly told: DangersIn['told']
  /** The text with what they stand for in their place. */
  readonly named: string
}

export async function hear(
  text: string,
  language: Language,
  heard: DangersIn,
  registry: Registry,
  context: Context,
  talk: Talk,
): Promise<Heard> {
  const { text: named, used } = await namesReplaced(text, registry, context.lookup.memory.kit, context)
  const gloss = isReadInPart(language) ? glossed(named, language) : undefined
  const english = gloss?.text ?? named
  // Spans of dangers hold for the sentence as typed; where its words were replaced they are accounted for by their form.
  const accounted = gloss ? dangersInGloss(english).told : named === text ? heard.told : dangersIn(named).told
  const spoken = gloss?.text ?? text
  const values = bestCover(candidatesOf(spoken))
  const answers = await context.lookup.memory.answers.list(context.community.id)
  const gone = deedsIn(spoken).includes('restore') ? await removedBy(context) : []
  const isSafe = heard.told.length === 0 || (asksPlace.test(text) && !ofOwn.test(text))
  const free = freeDetails(text, { used, answers, gone, isSafe }, talk)
  const isSure = free.meant !== undefined
  const isType = talk.about !== undefined && values.every(({ kind }) => kind === 'chemistry')
  const asksWords = !isSure && hasWord.test(spoken) && (isType || !isOnlyValues(spoken, values))
  const found = asksWords ? aboutIn(spoken, talk) : nothingAbout
  // What the handbook says is said in English: of what was put into that word for word only what is surely found.
  const { about, sureness, isOfTheme } = language === 'en' || found.sureness > 1 ? found : nothingAbout
  const frame = talk.frame ?? frameOfEntry(talk.about, registry)
  const { entry, dangers: judged } = askedOf(about ?? spoken)
  const ofEntry = { command: entry?.command, isJudged: judged.length > 0 }
  const read = (english: string) =>
    readPlainly(english, registry.vocabulary, frame, accounted, sureness, { typed: text, ...free }, ofEntry)
  const meant = language === 'en' ? read(english) : readForeign(gloss ?? asTyped(english), read)
  const { told, suspected } = besidesTitle(
    heardInTalk(used.some(({ kind }) => kind === 'pack') ? withThoseOf(accounted, heard, text) : heard, text, talk, {
      pack: used.some(({ kind }) => kind === 'pack'),
      charger: used.some(({ kind }) => kind === 'charger'),
    }),
    text,
    free,
    meant,
  )
  return {
    about,
    isSure,
    isOfTheme,
    answers,
    meant,
    told,
    dangers: [...new Set(told.map(({ danger }) => danger))],
    suspected,
    used,
    named,
  }
}

/** What the handbook answered last has a question that works it out with numbers: they may follow. */
function frameOfEntry(about: string | undefined, { vocabulary }: Registry): Frame | undefined {
  const asked = about === undefined ? undefined : askedOf(about).entry?.command
  const command = vocabulary.find(({ name }) => asked?.startsWith(`${name} `))
  return command && { question: { command: command.name, options: {} }, pending: undefined, doubts: [], names: [] }
}

/** The titles and names of what the asker removed lately. */
async function removedBy({ asker, community, lookup }: Context): Promise<readonly string[]> {
  const changes = await lookup.memory.history.changesOf(asker.id, community.id)
  return changes.flatMap(({ change }) => {
    if (change.of === 'rules' || change.after) return []
    return change.of === 'answer' ? (change.before?.title ?? []) : (change.before?.name ?? [])
  })
}

/**
 * The words of a standard answer's title tell of no pack, nor do those that it is to have: "delete the answer on puffed
 * packs". The rest is heard, and so is what somebody says of something of their own.
 */
function besidesTitle(heard: DangersIn, text: string, { about, meant: sure }: ToldFreely, meant: Meant): DangersIn {
  const { title, of = title, 'new-title': newTitle, text: words } = 'question' in meant ? meant.question.options : {}
  const called = answerCalled(text)
  const allowed = words !== undefined && permits(words)
  const names = present([
    about ?? of,
    called !== undefined && ofOwn.test(called) ? undefined : called,
    newTitle,
    words !== undefined && (ofOwn.test(words) || allowed) ? undefined : words,
  ])
  if (names.length + (sure ? 1 : 0) === 0) return heard
  const left = names.reduce(leftOut, text)
  const rest = dangersIn(sure ? besideDeeds(left) : left)
  const still = new Set([...rest.told.map(({ danger }) => danger), ...rest.suspected])
  const told = heard.told.filter(({ danger }) => still.has(danger))
  const suspected = heard.suspected.filter(danger => rest.suspected.includes(danger))
  // What it allows is judged by itself: the words around it say nothing of that.
  const own = allowed ? dangersIn(words) : { told: [], suspected: [] }
  return { told: [...told, ...own.told], suspected: [...suspected, ...own.suspected] }
}

/** "Packs may charge overnight": what it says may be done is judged like what is done, and no club's rule allows it. */
const permits = (words: string): boolean =>
  /\b(?:may|can|could|allow\w*|permit\w*|okay|ok|fine|free to|no need|needn't)\b/i.test(words) &&
  !/\b(?:not|never|no one|nobody (?:may|can)|cannot|\w+n't|unless|only)\b/i.test(words)
/** What stands in a question about a place, a person or a day is no danger. */
const asksPlace = /\b(?:where|who|when)\b/i
const ofOwn = /\b(?:i|i'm|my|mine)\b/i

function leftOut(text: string, name: string): string {
  const at = text.toLowerCase().indexOf(name.toLowerCase())
  if (at >= 0) return `${text.slice(0, at)}${text.slice(at + name.length)}`
  const ofName = new Set(name.toLowerCase().match(word))
  return text.replace(word, one => (ofName.has(one.toLowerCase()) ? '' : one))
}

const word = /[\p{L}\p{N}]+/gu

const fewWords = 9

interface About {
  readonly about: string | undefined
  readonly sureness: number
  readonly isOfTheme: boolean
}
/** A sign alone asks nothing. */
const hasWord = /\p{L}{2}/u
const nothingAbout: About = { about: undefined, sureness: 0, isOfTheme: false }

/**
 * The words as they go on from what the handbook was asked before ("is it dangerous"), where they do; else the words
 * themselves, and few words that find nothing with what was asked before.
 */
function aboutIn(text: string, talk: Talk): About {
  const theme = themeOf(talk)
  const isShort = theme !== undefined && !thanks(text) && isKnown(text) && text.trim().split(/\s+/).length <= fewWords
  const goes = isShort && (goesOn.test(text) || pointsBack.test(text.replace(pointsAhead, '')))
  const warmth = warmthToCharge(text)
  const own = { about: warmth ? themeOfWarmth(warmth) : text, isOfTheme: false }
  const behind = (before: string) => ({ about: `${before} ${text}`, isOfTheme: goes && talk.about !== undefined })
  // An entry's own short name says what it is about, and no word beside.
  const name = isShort ? askedOf(theme).entry?.id.replaceAll('-', ' ') : undefined
  const short = name === undefined ? [] : [behind(name)]
  const ways = [...(goes ? [...short, own] : [own, ...short]), ...(isShort ? [behind(theme)] : [])]
  const found = ways.map(way => ({ ...way, ...askedOf(way.about) })).find(({ sureness }) => sureness > 0)
  return found ?? nothingAbout
}

/** "A bigger one": of what was spoken of. */
const pointsBack = /\b(?:it|its|this|that|them|they|these|those|there|else|\w+(?:er|other|new) ones?)\b/i
/** "Is it bad to …": what it stands for follows. */
const pointsAhead =
  /\b(?:it|that)(?:'?s| is)?(?: \w+){1,2} (?:to|if|when|that)\b|\b(?:is|was|are) (?:it|there) (?:\w+ )?(?:to|if|when|that|a|an|any)\b/i

/** No number, and hardly a word that is strange. */
const isKnown = (text: string): boolean => !/\d/.test(text) && knownShare(text) >= mostlyKnown
const mostlyKnown = 0.65
