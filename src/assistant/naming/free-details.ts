// The details of a command that are told in free words: names, titles, texts. Numbers are read elsewhere.

import { plainText } from '../../ground/plain-text.ts'
import { bestCover, candidatesOf } from '../../language/candidates/index.ts'
import type { Frame, Talk } from '../../language/frames/frame.ts'
import { withoutOpening } from '../../language/sentence/opening.ts'
import type { Question } from '../../language/sentence/question.ts'
import type { CommandWords } from '../../language/sentence/vocabulary.ts'
import type { KitEntry } from '../../memory/kit.ts'
import type { StandardAnswer } from '../../memory/standard-answer.ts'
import { nameForm } from '../kit/kit-name.ts'
import { titleAsked } from './asked-title.ts'
import { answerNoun, commandMeant, isOfAnswer } from './deeds.ts'
import { titleOver } from './title-at.ts'
import { titleHolding } from './titles.ts'
import { answerTold, ruleIn, type ToldAnswer } from './told-answers.ts'
import { clockTold } from './told-clock.ts'
import { lessonTold } from './told-lessons.ts'
import { namesTold } from './told-names.ts'
import { lifted, ruleKind, rulesTold } from './told-rules.ts'
import { type Wanted, wantedOf } from './wanted.ts'

/** What is stored that the sentence may mean. */
interface Stored {
  /** Saved things whose names stand in it. */
  readonly used: readonly KitEntry[]
  readonly answers: readonly StandardAnswer[]
  /** Titles and names of what the asker removed lately. */
  readonly gone: readonly string[]
  /** No danger is told, which would come before any answer. */
  readonly isSafe: boolean
}

type FreeDetails = (command: CommandWords) => Question['options']

/** Commands that change what the club keeps. */
const changing = /^(?:answer (?!show|list)|house set|kit (?:save|remove|rename|note)|history)/

/** "This", of something that was just answered. */
const pointsBack =
  /\b(?:this|that|it|these|those|that's|what (?:you|was)|(?:your|the) (?:last|answer|reply|previous|above))\b/iu
const forClub = /\b(?:for|of|in|from|off|into) (?:the |our )?club\b|\bclub'?s? (?:kit|packs?|chargers?|list)\b/iu

export interface ToldFreely {
  /** For each command what its free details are, so far as the sentence tells them. */
  readonly of: FreeDetails
  /** The command that verbs and names tell for sure. */
  readonly meant: string | undefined
  /** The title of the standard answer that it is about, where it is about one. */
  readonly about: string | undefined
}

export function freeDetails(
  text: string,
  { used, answers, gone, isSafe }: Stored,
  { frame, answered }: Pick<Talk, 'frame' | 'answered'>,
): ToldFreely {
  const plain = plainText(withoutOpening(text))
  const lower = nameForm(text)
  const saved = used.map(({ name }) => name).filter(name => lower.includes(name))
  const values = bestCover(candidatesOf(plain))
  const names = namesTold(plain, values, saved)
  const clock = clockTold(plain, values)
  const limits = rulesTold(plain, values, frame?.question.command === 'house set' ? frame.question.options : {})
  const rules = clock === undefined ? limits : { ...limits, clock }
  const lesson = lessonTold(plain, values)
  const titles = answers.map(({ title }) => title)
  const wanted = wantedOf(plain, titles, spokenBefore(frame))
  const isOpen = frame?.pending === undefined
  const asked = isSafe && isOpen && !wanted ? titleAsked(plain, titles) : undefined
  const told = byContent(plain, toldOf(answerTold(plain, titles), wanted, asked), answers)
  const isClubs = forClub.test(plain)
  // "Make this one of our answers: wren setting".
  const heading = told.heading ?? (isShort(told.text) && !ruleIn(plain) ? told.text : undefined)
  const named = { ...told, gone: gone.find(one => lower.includes(one.toLowerCase())), saved, heading }
  const deed = wanted?.deed ?? (asked === undefined ? undefined : 'show')
  const meant = deed
    ? `answer ${deed}`
    : clock !== undefined && isSafe
      ? 'house set'
      : commandMeant(plain, {
          named,
          isLifting: Object.values(rules).includes(lifted),
          values,
          hasAnswers: answers.length > 0,
          isPending: !isOpen,
          isBehindChange: changing.test(frame?.question.command ?? ''),
          isOfPack: answered === undefined ? undefined : /\bpack: /.test(answered),
        })
  const before =
    pointsBack.test(plain) || (meant === 'answer save' && (told.text === undefined || told.text === heading))
      ? answered
      : undefined
  const isTitled = before !== undefined && heading !== undefined && heading === told.text
  const content = (isNew: boolean) =>
    isNew
      ? told.text
      : (changedText(
          plain,
          answers.find(({ title }) => title === told.title),
        ) ?? told.text)
  const byKind = ({ name: command }: CommandWords): Readonly<Record<string, string | undefined>> => ({
    'kit name':
      command === 'kit save'
        ? names.given
        : told.title && saved.length === 0
          ? undefined
          : (names.name ?? (pointsBack.test(plain) ? frame?.names[0] : undefined)),
    'pack name': names.name ?? frame?.question.options.name ?? frame?.names[0],
    lesson,
    matter: named.gone === undefined ? matterOf(plain, told.title !== undefined) : undefined,
    changed: named.gone,
    'new name': names.to,
    title: told.title,
    'new title':
      command === 'answer save' ? (isTitled ? heading : (told.heading ?? titleOver(told.text))) : told.newTitle,
    text: isTitled && command === 'answer save' ? undefined : content(command === 'answer save'),
    question: command === 'answer save' && (isTitled || told.text === undefined) ? before : undefined,
    owner: isClubs || (command !== 'kit save' && used[0]?.owner.scope === 'community') ? 'club' : undefined,
  })
  const of: FreeDetails = command => {
    const kinds = byKind(command)
    const given = command.options.map(
      ({ name, kind }) => [name, kind === ruleKind ? rules[name] : kinds[kind]] as const,
    )
    return Object.fromEntries(given.filter((pair): pair is [string, string] => pair[1] !== undefined))
  }
  return { of, meant, about: isOfAnswer(plain, named) ? told.title : undefined }
}

/** The title of the standard answer that was spoken of last. */
const spokenBefore = (frame: Frame | undefined): string | undefined =>
  frame?.question.options['new-title'] ?? frame?.question.options.title

function toldOf(told: ToldAnswer, wanted: Wanted | undefined, asked: string | undefined): ToldAnswer {
  if (!wanted) return asked === undefined ? told : { ...told, title: asked }
  const { deed, title, newTitle, text } = wanted
  return deed === 'save' ? { ...told, heading: title, text } : { ...told, title, newTitle, text }
}

/** A standard answer that is spoken of by what it says. */
function byContent(plain: string, told: ToldAnswer, answers: readonly StandardAnswer[]): ToldAnswer {
  const isOpen = [told.title, told.heading, told.text].every(one => one === undefined)
  return isOpen && answerNoun.test(plain) ? { ...told, title: titleHolding(plain, answers) } : told
}

const isShort = (text: string | undefined): boolean => text !== undefined && text.split(' ').length <= mostOfTitle
const mostOfTitle = 5

/** What somebody wants the history of. */
function matterOf(plain: string, isTitled: boolean): string | undefined {
  const found = Object.entries(matters).find(([, words]) => words.test(plain))
  return isTitled ? 'answers' : found?.[0]
}

const matters = {
  answers: /\b(?:answers?|pin(?:s|ned)?|cards?|titles?|word(?:ed|ing)|re(?:worded|wrote))\b/iu,
  rules: /\b(?:rules?|limits?|max(?:imum)?|rate|settings?|storage|floor|\d[\d.,]* ?c)\b/iu,
  kit: /\b(?:kit|packs?|chargers?|source|list)\b/iu,
}

/** "Change 0.1 V to 0.05 V" in the words that are stored; undefined where they hold nothing of that. */
function changedText(plain: string, answer: StandardAnswer | undefined): string | undefined {
  const [, from = '', to = ''] = /\b(?:change|replace) "?(.+?)"? (?:to|by|with|into) "?([^,"]+)"?/iu.exec(plain) ?? []
  if (!answer || from === '' || !answer.content.includes(from)) return undefined
  return answer.content.replace(from, () => to.trim())
}
