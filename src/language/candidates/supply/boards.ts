// Packs that charge together: "on the par board", "all at once", "three at a time", "a 6 way board", "each on its own port".

import { wordSet } from '../../../ground/word-set.ts'
import { phraseSet } from '../../quantities/tokens.ts'
import { type Family, type Found, none, type Sentence } from '../sentence/sentence.ts'

/** "Parallel" in the spellings that people give it, and what it is done on. */
const board = /^(?:par|par(?:a(?!$)|r*[ae]l+[ae])\p{L}*|boards?|paraboards?)$/u
const otherBoards = wordSet(
  'notice circuit flight control white bulletin main committee message meeting members protection protective protecting bms safety guard',
)
/** Cells, not packs, are in parallel there. */
const ofCells = wordSet('cell cells string strings element elements')

const atOnce = phraseSet(
  'at once, all at once, at the same time, at one time, simultaneously, together, all together, in one go, at one go',
)
const atATime = phraseSet('at a time, at the time, per round, per batch, per go, a go, up')
const holds = phraseSet(
  'way, ways, slot, slots, bay, bays, hole, holes, place, places, way board, slot board, port board, place board',
)
const inGroups: ReadonlyMap<string, number> = new Map(
  Object.entries({ pairs: 2, twos: 2, threes: 3, fours: 4, fives: 5, sixes: 6 }),
)
const howMany = wordSet('many number')
const outlet = /^(?:ports?|outputs?|channels?|chargers?|sides?|sockets?|outlets?)$/
const chargerWords = wordSet('charger chargers charge-box')
const most = 24

export const findBoards: Family = (sentence, before) => {
  const several =
    before.some(
      ({ kind, text, pack, score }) => (kind === 'count' && Number(text) > 1 && score > 0.5) || (pack?.count ?? 1) > 1,
    ) || sentence.mentions(howMany)
  // What hangs on ports of its own shares no board.
  const apart = sentence.tokens.some(({ word }) => outlet.test(word) && word !== 'charger')
  const found: Found[] = []
  for (let first = 0; first < sentence.tokens.length; first += 1) {
    const group = groupAt(sentence, first)
    if (group) found.push(group)
    else if (board.test(sentence.word(first)) && !isAbsent(sentence, first) && isOfPacks(sentence, first)) {
      const after = first + 1
      found.push({
        kind: 'board',
        text: '',
        first: openedAt(sentence, first),
        after,
        score: 0.7,
        ...placesBehind(sentence, after),
      })
    }
    const end = several && !apart ? sentence.phraseEnd(first, atOnce) : undefined
    if (end !== undefined) found.push({ kind: 'board', text: '', first, after: end, score: 0.6 })
    found.push(...ownPorts(sentence, first))
  }
  return found
}

/** "No board, two ports". */
const isAbsent = (sentence: Sentence, at: number): boolean => /^(?:no|without)$/.test(sentence.word(at - 1))

const holding = wordSet('of for with take takes hold holds carry carries has have fit fits')

/** "Boards of six", "a board that takes four": how many it holds, and where that ends. */
function placesBehind(sentence: Sentence, after: number): Pick<Found, 'text' | 'after' | 'score'> | undefined {
  const at = sentence.word(after) === 'that' ? after + 1 : after
  const numeral = holding.has(sentence.word(at)) ? sentence.wholeNumeral(at + 1, 2, most) : undefined
  if (!numeral || sentence.measures[at + 1]?.length !== 0 || sentence.isStuck(numeral.after)) return undefined
  return { text: String(numeral.value), after: numeral.after, score: 0.9 }
}

const openers = wordSet('in on one the a my our same single')

/** With the little words before it, which say nothing else. */
function openedAt(sentence: Sentence, first: number): number {
  let at = first
  while (openers.has(sentence.word(at - 1)) || board.test(sentence.word(at - 1))) at -= 1
  return at
}

const isOfPacks = (sentence: Sentence, at: number): boolean =>
  // "On par with" is no board.
  (sentence.word(at) !== 'par' || sentence.word(at - 1) === 'in' || /^(?:board|charg)/.test(sentence.word(at + 1))) &&
  !otherBoards.has(sentence.word(at - 1)) &&
  !otherBoards.has(sentence.word(at + 1)) &&
  !ofCells.has(sentence.word(at - 1)) &&
  !(sentence.word(at - 1) === 'in' && ofCells.has(sentence.word(at - 2)))

/** So many at a time, or as many as the board has places for. */
function groupAt(sentence: Sentence, first: number): Found | undefined {
  const named = sentence.word(first) === 'in' ? inGroups.get(sentence.word(first + 1)) : undefined
  if (named !== undefined) return { kind: 'batch', text: String(named), first, after: first + 2, score: 0.9 }
  // "One at a time" joins nothing.
  const numeral = sentence.wholeNumeral(first, 2, most)
  if (!numeral) return undefined
  const at = sentence.word(numeral.after) === '-' ? numeral.after + 1 : numeral.after
  const [together, places] = [sentence.phraseEnd(at, atATime), sentence.phraseEnd(at, holds)]
  const after = together ?? places
  if (after === undefined) return undefined
  // "A charger with six slots" has so many outlets of its own.
  const isCharger = sentence.mentions(chargerWords) && !sentence.tokens.some(({ word }) => board.test(word))
  return {
    kind: together === undefined && !isCharger ? 'board' : 'batch',
    text: String(numeral.value),
    first,
    after,
    score: 0.9,
  }
}

const owners = wordSet('its their his own a one separate different')

/** As many ports as packs: "each on its own port", "on separate outputs", "a port each". */
function ownPorts(sentence: Sentence, first: number): readonly Found[] {
  if (!outlet.test(sentence.word(first))) return none
  let start = first
  while (owners.has(sentence.word(start - 1))) start -= 1
  const isOwn = /^(?:own|separate|different)$/.test(sentence.word(first - 1))
  const isEach = sentence.word(first + 1) === 'each' && start < first
  if (!isOwn && !isEach) return none
  return [{ kind: 'batch', text: 'each', first: start, after: isEach ? first + 2 : first + 1, score: 0.8 }]
}
