// The dangers that a text tells, heard as one of a conversation: a car that feeds is no leaving, and who leaves leaves a charge.

import type { Danger } from '../../../charging/situation/dangers.ts'
import { attempt } from '../../../ground/problem.ts'
import { bestCover, candidatesOf } from '../../candidates/index.ts'
import { correctionsIn } from '../../dangers/corrections.ts'
import { type DangersIn, dangersBetweenValues, dangersIn } from '../../dangers/index.ts'
import type { Talk } from '../../frames/frame.ts'
import { namesPack } from '../../reading/told/told-pack.ts'
import { readPack } from '../../things/pack.ts'
import { opensAsking } from './asks-nothing.ts'
import { asksReminder } from './asks-reminder.ts'
import { alikeOnBoard, amongOthers, bothPacks, ofAll, onBoard, oneApart, without, withTold } from './heard-of-boards.ts'
import { countOf } from './words-beside.ts'

/** What of the kit a text names. */
interface Named {
  readonly pack: boolean
  readonly charger: boolean
}

/** What a text tells behind what was said before. */
export const heardInTalk = (heard: DangersIn, text: string, talk: Talk, named: Named): DangersIn =>
  [
    goingOn,
    besidePack,
    besidesSource,
    ofReminder,
    ofOtherType,
    inCharge,
    leftLow,
    onBoard,
    oneApart,
    amongOthers,
    alikeOnBoard,
    bothPacks,
    afterCrash,
  ].reduce((sofar, hear) => hear(sofar, text, talk, named), heard)

const bareType =
  /^\W*(?:(?:and|or|but|no|so|ok|if|what|about|how|as|for|with|a|an|it|its|it's|is|was|were|the|same|then|instead|plain|please)\b\W*)*$/i

const setsIt =
  /\b(?:i|we|i'll|we'll|i'm)\b.*\b(?:charg(?:e|ed|ing)|set|put|run)\b.*\b(?:as|to|on|in)(?: an?| the)?\s*$/i
const correctsIt = /\b(?:it'?s|it is|they'?re|mean|meant|sorry|label|actually)\b/i

/**
 * "And as lipo?": the same of another type of cells, and nothing is charged in a wrong mode. "I set it to lihv": it is,
 * where another type was told.
 */
function ofOtherType(heard: DangersIn, text: string, { frame }: Talk): DangersIn {
  const values = frame ? bestCover(candidatesOf(text)) : []
  const [type] = values
  if (values.length !== 1 || type?.kind !== 'chemistry') return heard
  const pack = frame?.doubts.includes('chemistryAssumed') ? undefined : frame?.question.options.pack
  if (pack && !pack.includes(type.text) && setsIt.test(text.slice(0, type.start)) && !correctsIt.test(text)) {
    return withTold(heard, 'wrongMode', text)
  }
  if (!bareType.test(text.slice(0, type.start) + text.slice(type.end))) return heard
  return without(heard, 'wrongMode')
}

/** Chargers for what is charged here. */
const ofLithium = /\b(?:pocket|field|club|bench|lipo|lithium|balance|smart|dual) charger\b/i
const speaker = /\b(?:i|we|i'?m|i'?ll|we'?re)\b/i

const walled = /\b(?:garage|shed|tent|hall|hangar|barn|indoors|inside|closed|shut|in (?:the|my|a) (?:car|van))\b/i

/** "From the car instead" tells what feeds: behind a question nobody who is away, beside a charger that is known no other charger. */
function besidesSource(heard: DangersIn, text: string, { frame }: Talk, named: Named): DangersIn {
  const found = bestCover(candidatesOf(text))
  const source = found.find(({ kind }) => kind === 'source' || kind === 'voltage')
  const isCharger = named.charger || ofLithium.test(text) || found.some(({ kind }) => kind === 'charger')
  const isOfCar = /^car\b/.test(frame?.question.options.source ?? '') && !walled.test(text)
  const mayBe = (danger: Danger) =>
    danger === 'wrongCharger'
      ? isCharger
      : danger === 'exhaust'
        ? isOfCar
        : frame && (danger === 'unattended' || danger === 'revive')
  if (!source || speaker.test(text) || ![...heard.told.map(({ danger }) => danger), ...heard.suspected].some(mayBe))
    return heard
  const rest = dangersIn(`${text.slice(0, source.start)}a supply${text.slice(source.end)}`.replace(/\bcar'?s?\b/, ''))
  if (rest.told.some(({ danger }) => mayBe(danger))) return heard
  // Nobody said yet where the engine runs.
  const exhaust = heard.told.flatMap(({ danger }) => (danger === 'exhaust' && isOfCar ? [danger] : []))
  return {
    told: heard.told.filter(({ danger }) => !mayBe(danger)),
    suspected: [...heard.suspected.filter(danger => !mayBe(danger) || rest.suspected.includes(danger)), ...exhaust],
  }
}

const leaves =
  /\b(?:go|going|gone|leav\w+|left|off|out|away|bed|asleep|sleep\w*|nap|shop\w*|work|while|meanwhile|upstairs|back)\b/i

/** Who only wants to be told when it is done leaves nothing. */
const ofReminder = (heard: DangersIn, text: string, { frame }: Talk): DangersIn =>
  !frame || !asksReminder(text) || leaves.test(text) ? heard : without(heard, 'unattended')

const goodNight = /\bbed ?time\b|\b(?:to|into|for) bed\b|\b(?:good ?)?night\b(?! flights?\b)|\bsleep/i

/** "Going down for breakfast": nobody says that somebody stays. */
const goesAway =
  /(?:\b(?:going|off|heading|popping|nipping|stepping|walking|running|gone|go) (?:down|up|out|off|to|for|home|over|away|back|inside|shopping)\b|\b(?:he|she|they|we|i|nobody|everyone) (?:then |all )?(?:leaves?|(?:has|have|must|needs?) (?:to )?(?:go|leave|be off))\b)(?!.*\b(?:stays?|watch\w*|with it)\b)/i

const ofTime: ReadonlySet<string> = new Set(['duration', 'clock', 'number'])

/** "I sleep next to it": nobody is awake. */
const sleepsBeside =
  /^(?!.*\b(?:not|never|after|then|before|until|once|when|\w+n't)\b).*\b(?:i|we|i'?ll|everyone|everybody) (?:\w+ )?(?:sleep|nap|doze)\b/i

/** "Over night then?" */
const overNight = /^(?!.*\b(?:why|what(?! (?:about|if)\b)|who|never|no|not)\b).*\bover ?-?night\b/i
const isUnattended = ({ danger }: { readonly danger: Danger }): boolean => danger === 'unattended'

/** Behind a question about a charge, what is only said of a leaving or of sleep is said of that charge. */
function inCharge(heard: DangersIn, text: string, { frame }: Talk): DangersIn {
  const charges = frame && (frame.question.options.pack ?? frame.question.options.packs) !== undefined
  if (charges && sleepsBeside.test(text)) return withTold(heard, 'unattended', text)
  if (charges && overNight.test(text) && dangersIn(`i leave my pack charging ${text}`).told.some(isUnattended))
    return withTold(heard, 'unattended', text)
  if (!charges || opensAsking.test(text) || heard.told.some(({ danger }) => danger === 'unattended')) return heard
  const [told] = heard.suspected.includes('unattended')
    ? dangersIn(`my pack is charging, ${text}`).told.filter(({ danger }) => danger === 'unattended')
    : []
  const others = without(heard, 'unattended')
  if (told) return { ...others, told: [...heard.told, { ...told, typed: text }] }
  const isAway =
    goodNight.test(text) || (goesAway.test(text) && bestCover(candidatesOf(text)).every(({ kind }) => ofTime.has(kind)))
  return isAway ? { ...heard, suspected: [...others.suspected, 'unattended'] } : heard
}

const forLong =
  /\b(?:no (?:idea|clue)|don'?t know|dunno|not sure|nobody knows|unknown|who knows|can'?t (?:say|tell|remember)|no one knows)\b.*\b(?:long|since|when)\b|\b(?:for|since|after) (?:[\w-]+ )?(?:days|weeks?|months?|years?|ages|winter|summer|spring|autumn|christmas)\b/i

/** "No idea since when", of a pack that was told to stand so low: it is not tricked awake. */
function leftLow(heard: DangersIn, text: string, { frame }: Talk): DangersIn {
  const { pack = '', from, at = from } = frame?.question.options ?? {}
  const told = attempt(() => readPack(pack).value)
  const volts = Number.parseFloat(at ?? '')
  const isLow =
    told && at?.includes('V') && volts / (at.includes('pack') ? told.series : 1) < told.chemistry.precharge_V.value
  return isLow && forLong.test(text) ? withTold(heard, 'revive', text) : heard
}

/** Of so few words what only may be told counts too: "pillow", where a place was asked for. */
const fewWords = 5
/** Volts that are told behind a source may be its own. */
const ofVolts: ReadonlySet<Danger> = new Set(['tooLow', 'overfull'])
const isOfSource = (danger: Danger, frame: Talk['frame']): boolean =>
  ofVolts.has(danger) && (frame?.question.options.source !== undefined || frame?.question.command === 'source')

/** "Can't even hold it", "one's a LiFe though": what a text tells where it goes on in the sentence that was said before. */
function goingOn(heard: DangersIn, text: string, { frame }: Talk, named: Named): DangersIn {
  const { typed = '' } = frame ?? {}
  const { foundSound, measured, mistaken, otherPack } = correctionsIn(text)
  const isAnew = named.pack || foundSound || measured || mistaken || otherPack
  if (typed === '' || isAnew || heard.told.length > 0) return heard
  const before = dangersIn(typed)
  const whole = dangersIn(`${typed} ${text}`)
  const isNew = (danger: Danger) =>
    !before.told.some(one => one.danger === danger) &&
    !before.suspected.includes(danger) &&
    !isOfSource(danger, frame) &&
    !(danger === 'boardMixed' && ofAll.test(text))
  const told = whole.told.map(({ danger }) => danger).filter(isNew)
  if (told.length > 0) return told.reduce((sofar, danger) => withTold(sofar, danger, text), heard)
  const isOpen = heard.suspected.length === 0 && countOf(text) <= fewWords
  return isOpen ? { ...heard, suspected: whole.suspected.filter(isNew) } : heard
}

/** What values of the pack may show not to be there: "610 mAh went in" of 1300. */
const byValues: readonly Danger[] = ['overfull', 'wrongMode', 'wrongCount']

/**
 * "My charger only does LiFe", "it says 5S", "1900 went in": what is told beside the pack that was spoken of, as if that
 * stood before it.
 */
function besidePack(heard: DangersIn, text: string, { frame }: Talk, named: Named): DangersIn {
  const pack = attempt(() => readPack(frame?.question.options.pack ?? '').value)
  if (!pack || named.pack || !/\d|\bli|\bni/i.test(text) || bestCover(candidatesOf(text)).some(namesPack)) return heard
  const type = frame?.doubts.includes('chemistryAssumed') ? '' : ` ${pack.chemistry.name}`
  const whole = `my ${pack.series}S ${Math.round(pack.capacity_Ah * 1000)}${type} pack. ${text}`
  const { told, suspected } = dangersIn(whole)
  const still = new Set([...told.map(({ danger }) => danger), ...suspected])
  // "It took 2600, the label says 2200": what the text's own values show no other pack's label relieves.
  const alone = dangersBetweenValues(text)
  const holds = (danger: Danger) => still.has(danger) || alone.includes(danger)
  const isRelieved = heard.told.some(({ danger }) => byValues.includes(danger) && !holds(danger))
  const relieved = isRelieved ? { told: heard.told.filter(({ danger }) => holds(danger)), suspected } : heard
  return dangersBetweenValues(whole)
    .filter(danger => !alone.includes(danger) && !isOfSource(danger, frame))
    .reduce((sofar, danger) => withTold(sofar, danger, text), relieved)
}

/** "Dent of 3 mm, cells all equal": behind a crash it is what was found on that pack. */
function afterCrash(heard: DangersIn, text: string, { told }: Talk): DangersIn {
  const [found] = told.some(({ danger }) => danger === 'crashed')
    ? heard.suspected.filter(danger => danger === 'pierced' || danger === 'swollen')
    : []
  return found ? withTold(without(heard, found), found, text) : heard
}
