// What the values of a sentence say of which command is meant, whatever its words sound like: one row for each such sign.

import { lipo } from '../../../charging/things/chemistries.ts'
import { socOf, startOf } from '../../../charging/things/level.ts'
import { attempt } from '../../../ground/problem.ts'
import type { Candidate } from '../../candidates/sentence/candidate.ts'
import { conceptsIn } from '../../model/concepts.ts'
import { readAnyState } from '../../things/state.ts'
import { areApart } from '../told/cells-read.ts'
import { outlets } from '../told/charger-told.ts'
import { severalKinds } from '../told/packs-told.ts'
import { isEnd, isToldGoal } from '../told/slots.ts'
import { toldBy } from '../told/told-pack.ts'
import {
  asksAge,
  asksAtOnce,
  asksEnd,
  asksNeed,
  asksPacks,
  asksWhich,
  inTurn,
  isLabelTakenAlong,
  isOverLead,
  isTakenAlong,
  ofClub,
  oneForAll,
  standsThere,
  tookSoMuch,
} from './said-of-it.ts'
import { isOfOne, type Sentence, type Sign, takes } from './sign.ts'
import { signsOfTime } from './signs-of-time.ts'

const onOutlets = ({ values }: Sentence): boolean =>
  values.some(
    ({ kind, text, next = '' }) => kind === 'batch' || (kind === 'count' && Number(text) > 1 && outlets.test(next)),
  )
const onBoard = (sentence: Sentence): boolean =>
  sentence.values.some(
    ({ kind, typed }) => kind === 'board' && !(onOutlets(sentence) && /^(?:at|all|in one|together|simul)/i.test(typed)),
  )

const asksEndVolts = (text: string, about = conceptsIn(text)): boolean =>
  about.includes('cutoff') || (about.includes('volts') && !/\b(?:amp|current)/i.test(text))
const countsPacks = ({ kind, text, next = '' }: Candidate): boolean =>
  kind === 'count' && Number(text) > 1 && /^(?:packs?|batter|lipos?|of)/.test(next)

const aLittle = 0.05
/** 0 to 1, as of the commonest cells. */
const fullness = (level: Pick<Candidate, 'text'> | undefined): number =>
  (level && attempt(() => socOf(startOf(readAnyState(level.text).value, lipo, {}), lipo))) ?? Number.NaN

export const signs: readonly Sign[] = [
  // "How long does a 4S 1500 take from a 12 V supply over 5 m of AWG 16": the lead is a part of the charge, and not asked about.
  {
    meant: command => takes(command, 'gauge') && (takes(command, 'pack') || takes(command, 'packs')),
    from: command => takes(command, 'gauge', 'drop'),
    holds: ({ text, values, pack }) =>
      pack !== undefined && ['gauge', 'length'].every(of => values.some(({ kind }) => kind === of)) && isOverLead(text),
    isNoWords: true,
  },
  // "How healthy is wren", and nothing else told: its age, and not what it holds.
  {
    meant: command => takes(command, 'resistance', 'one', 'other'),
    from: command => takes(command, 'pack'),
    holds: ({ text, values, pack }) => pack !== undefined && values.length === 1 && asksAge.test(text),
    isNoWords: true,
  },
  // "Wren took 610 mAh in 62 min at 0.7 A from 3.75 V": what a pack took is noted.
  { meant: command => takes(command, 'put-back', 'took'), from: isOfOne, holds: ({ text }) => tookSoMuch.test(text) },
  // "My 5S 1000 stands at 3.7 a cell": what that is.
  {
    meant: command => takes(command, 'at', 'back'),
    from: command => takes(command, 'pack', 'discharge'),
    holds: ({ text }) => standsThere.test(text),
  },
  // How packs hang together decides what they get: places on a board, or ports.
  {
    meant: command => takes(command, 'packs', 'places'),
    from: command => isOfOne(command) || takes(command, 'packs', 'ports'),
    holds: sentence => sentence.pack !== undefined && onBoard(sentence),
  },
  {
    meant: command => takes(command, 'packs', 'ports'),
    from: command => isOfOne(command) || takes(command, 'packs', 'places'),
    holds: sentence => sentence.pack !== undefined && !onBoard(sentence) && onOutlets(sentence),
  },
  // "Amps for 3S 2200 and 4S 1500": packs of several kinds, of which none feeds, are charged one after another.
  {
    meant: command => takes(command, 'packs', 'ports'),
    from: isOfOne,
    holds: ({ text, values }) =>
      severalKinds(values) && !asksWhich.test(text) && !values.some(({ kind }) => kind === 'source'),
  },
  // "A 3S 2100 and a 4S 2100, which charges faster": beside each other.
  {
    meant: command => command.name === 'compare',
    from: command => isOfOne(command) || takes(command, 'packs', 'ports'),
    holds: ({ text, values }) => severalKinds(values) && asksWhich.test(text),
  },
  // "Four 3S 2200, one after the other": so many charges take as many times as long.
  {
    meant: command => takes(command, 'packs', 'ports'),
    from: isOfOne,
    holds: ({ text, values, pack }) =>
      (inTurn.test(text) || oneForAll.test(text)) &&
      ((pack?.count ?? 1) > 1 || (pack !== undefined && values.some(countsPacks))),
  },
  // "What does the generator have to deliver for these": what feeds them.
  {
    meant: command => command.name === 'supply',
    from: () => true,
    holds: ({ text, pack }) => pack !== undefined && asksNeed.test(text),
    isNoWords: true,
  },
  // "How many 3S 2200 will the 30 Ah box lift": none of them alone is charged.
  {
    meant: command => command.name === 'source',
    from: isOfOne,
    holds: ({ text, values, pack }) => pack !== undefined && asksPacks(text, values),
  },
  // "Eight 4S 5000 a day, 31 p a kilowatt-hour": what it costs is worked out.
  {
    meant: command => takes(command, 'price', 'energy'),
    from: () => true,
    holds: ({ values, pack }) => pack !== undefined && values.some(({ kind }) => kind === 'price'),
    isNoWords: true,
  },
  // "A 900 W generator, how many 6S 5000 at the same time": what it gives, and not what it holds.
  {
    meant: command => command.name === 'supply',
    from: command => takes(command, 'source'),
    holds: ({ text, values, pack }) => pack !== undefined && asksAtOnce(text, values),
  },
  // "5 A on a 4S 2200, fine by our rules": a list answers no question about this pack.
  {
    meant: command => command.name === 'current',
    from: ({ options }) => options.length === 0,
    holds: ({ values, pack }) =>
      pack?.series !== undefined && values.some(({ kind }) => kind === 'current' || kind === 'rate'),
  },
  // "I put 1450 into a 1300": of two capacities one goes into the other, and that is judged.
  {
    meant: command => takes(command, 'at', 'back'),
    from: command => takes(command, 'pack'),
    holds: ({ values }) => {
      const told = values.filter(value => toldBy(value)?.capacity_Ah !== undefined)
      return told.length === 2 && told[1]?.cue === 'into'
    },
  },
  // "From full down to storage at 1 A": what is stored from above is drained, and no charge is meant.
  {
    meant: command => takes(command, 'pack', 'discharge'),
    from: command => takes(command, 'from', 'to'),
    holds: ({ values }, { name }) => {
      const levels = values.filter(({ kind }) => kind === 'state')
      const goal = fullness(levels.find(isToldGoal))
      const from = fullness(levels.find(one => !isToldGoal(one)))
      return from > goal + aLittle && Math.abs(goal - fullness({ text: name })) <= aLittle
    },
  },
  // "From storage at 1 A, how long": who comes from there charges.
  {
    meant: command => takes(command, 'pack', 'within'),
    from: command => takes(command, 'pack', 'discharge'),
    holds: ({ text, values, pack }) =>
      pack !== undefined &&
      /\bhow long\b|\bwhen\b|\bminutes\b/i.test(text) &&
      values.some(({ kind, text, cue }) => kind === 'state' && text === 'storage' && cue === 'from') &&
      values.filter(({ kind }) => kind === 'state').length === 1,
  },
  ...signsOfTime,
  // "Is a 3S 5000 allowed on the plane": packs are taken along, and not charged.
  {
    meant: ({ options }) => options.length === 1 && options[0]?.kind === 'packs',
    from: command => takes(command, 'pack') || takes(command, 'packs'),
    holds: ({ text, values }) => isTakenAlong(text, values),
    isNoWords: true,
  },
  // "77 Wh, cabin or suitcase": of watt-hours alone the handbook says how far they may go.
  {
    meant: command => command.name === 'handbook',
    from: command => takes(command, 'packs', 'energy'),
    holds: ({ text, values }) => isLabelTakenAlong(text, values),
  },
  // "One cell 3.70, the other 3.20, what current": that they lie apart is what matters.
  {
    meant: command => takes(command, 'chemistry', 'volts'),
    from: isOfOne,
    holds: ({ values }) => areApart(values),
    isNoWords: true,
  },
  // "Our chargers end at C/20", and no pack told: that is so for all of the club.
  {
    meant: command => takes(command, 'ends'),
    from: () => true,
    holds: ({ text, values }) => values.length === 1 && values.every(isEnd) && ofClub.test(text) && !text.includes('?'),
    isNoWords: true,
  },
  // "What cutoff for a LiFe 2S", "the most volts of a 3S": of cells alone no charge can be worked out.
  {
    meant: command => takes(command, 'cutoffs'),
    from: isOfOne,
    holds: ({ text, values, pack }) => !pack && values.length === 1 && asksEndVolts(text),
  },
  // "Until which voltage do I charge a 4S LiHV": nothing else of cells alone ends there.
  {
    meant: command => takes(command, 'cutoffs'),
    from: command => takes(command, 'pack'),
    holds: ({ text, values, pack }) => !pack && values.length === 1 && asksEnd.test(text),
    isNoWords: true,
  },
]
