// A plain sentence: its dangers, the saved names in it, and what is meant by the rest.

import type { Danger } from '../../charging/situation/dangers.ts'
import { askedOf } from '../../handbook/asked.ts'
import type { Talk } from '../../language/conversation/frame.ts'
import { readPlainly } from '../../language/conversation/read-plainly.ts'
import { type DangersIn, dangersIn } from '../../language/dangers/index.ts'
import { knownShare } from '../../language/model/index.ts'
import type { Meant } from '../../language/reading/meant.ts'
import type { KitEntry } from '../../memory/memory.ts'
import type { Context } from '../context.ts'
import { namesReplaced } from '../kit/kit-names.ts'
import type { Registry } from '../registry.ts'

export interface Heard {
  readonly meant: Meant
  readonly dangers: readonly Danger[]
  /** Dangers that it may well tell: never a plain go. */
  readonly suspected: readonly Danger[]
  /** What the handbook is asked; absent where it has nothing on that. */
  readonly about: string | undefined
  /** The saved things that were named. */
  readonly used: readonly KitEntry[]
  /** The text with what they stand for in their place. */
  readonly named: string
}

export async function hear(
  text: string,
  { told, suspected }: DangersIn,
  registry: Registry,
  context: Context,
  { frame, about: before }: Talk,
): Promise<Heard> {
  const { text: named, used } = await namesReplaced(text, registry, context.memory.kit, context)
  // Spans of dangers hold for the sentence as typed; where names were replaced, words are accounted for by their form.
  const accounted = named === text ? told : dangersIn(named).told
  const { about, sureness } = aboutIn(text, before)
  return {
    about,
    meant: readPlainly(named, registry.vocabulary, frame, accounted, sureness),
    dangers: [...new Set(told.map(({ danger }) => danger))],
    suspected,
    used,
    named,
  }
}

const fewWords = 6

/** The words themselves, else few words as they go on from what the handbook was asked before: "is it dangerous". */
function aboutIn(text: string, asked: string | undefined): { about: string | undefined; sureness: number } {
  const isShort = isKnown(text) && text.trim().split(/\s+/).length <= fewWords
  const before = isShort ? asked : undefined
  const ways = before === undefined ? [text] : [text, `${before} ${text}`]
  const found = ways.map(about => ({ about, ...askedOf(about) })).find(({ entry }) => entry !== undefined)
  return found ?? { about: undefined, sureness: 0 }
}

/** No number and no word that is strange. */
const isKnown = (text: string): boolean => !/\d/.test(text) && knownShare(text) === 1
