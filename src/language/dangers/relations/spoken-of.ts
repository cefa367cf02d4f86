// What a word that sounds like a danger is said of: the charger and not the pack, a trip that is over, a load in the boot.

import { distance } from 'fastest-levenshtein'
import { clauseAt, crossesClause, type Relation, type Told, textOf } from './relation.ts'

const matching = (what: RegExp) => (word: string | undefined) => word !== undefined && what.test(word)
const isCharger = matching(
  /^(?:chargers?|supply|supplies|psus?|adapters?|adaptors?|inverter|transformer|generator|laptop)$/,
)
const isPart = matching(/^(?:xt|ec|deans|connectors?|plugs?|leads?|wires?|cables?|esc|escs|motors?)$/)
const isDevice = (word: string | undefined) => isCharger(word) || isPart(word)
const isPack = matching(
  /^(?:packs?|bricks?|lipos?|lihvs?|life|batter(?:y|ies)|cells?|akkus?|it|its|they|theyre|them|one|s)$/,
)
const isBeside = matching(/^(?:on|off|onto|from|with|at|by|in|near|beside|under|to|the|my|a|an|our|his|her|this|that)$/)
const isArticle = matching(/^(?:the|my|a|an|our|his|her|this|that)$/)
const isHot = matching(/^(?:hot|warm\w*|hotter|toasty|heats?|heated|overheat\w*|boiling|roasting|burn\w*)$/)

const isNamedPack = matching(/^(?:packs?|lipos?|lihvs?|batter(?:y|ies)|batts?|cells?|akkus?|s|mah)$/)

/** Whether all that is hot is said to be a charger, what feeds it or what the current goes through. */
export function isOfDevice(told: Told): boolean {
  const words = told.marked.words.map(({ w }) => w)
  const hot = words.flatMap((word, at) => (isHot(word) ? [at] : []))
  // "The plug gets hot and the pack too".
  const isAlsoPack = (at: number) => words[at + 1] === 'and' && words.slice(at + 2, at + 5).some(isNamedPack)
  const holds = (at: number) => (isDevice(words[at + 1]) || isSaidOfDevice(told, words, at)) && !isAlsoPack(at)
  return hot.length > 0 && hot.every(holds)
}

/** "The charger gets hot at 20 A": nothing is said of a lead. */
export const isHotCharger = (told: Told): boolean => isOfDevice(told) && !told.marked.words.some(({ w }) => isPart(w))

/** "I spilled tea on the charger": what is wet is on the mains, and no pack. */
export const wetDevice: Relation = told => {
  const { words, denies } = told.marked
  const at = words.findIndex(({ w }, n) => isCharger(w) && !denies[n - 1])
  const wet = words.findIndex((_, n) => told.is(n, 'wetness'))
  const isOther = words.some(({ w }) => isNamedPack(w)) || told.has('stayedDry') || told.has('once')
  if (at < 0 || wet < 0 || isOther || crossesClause(told, Math.min(at, wet), Math.max(at, wet))) return undefined
  return denies.slice(0, Math.max(at, wet)).includes(true)
    ? undefined
    : { danger: 'mainsWet', from: Math.min(at, wet), to: Math.max(at, wet) + 1 }
}

const inWet =
  /\b(?:charg\w+|plugged)(?: (?:it|them|a|my|the|pack|packs|lipo|lipos|\d+|s))* (?:in|on|at|by) (?:the |heavy |light |a |wet )*(?:rain|drizzle|wet|bathroom|bathtub|bath|shower|grass|puddle)\b/
const isGotWet = /\b(?:got|was|were|fell|been|has|wet|soaked|dropped|dripp\w*|water)\b/

/** "Charging in the rain": where, and no pack that got wet. */
export const chargedInWet: Relation = told => {
  const { words, denies } = told.marked
  const text = textOf(words)
  const at = words.findIndex(({ w }) => isCharge(w))
  return inWet.test(text) && !isGotWet.test(text.replace(inWet, '')) && !denies.includes(true)
    ? { danger: 'mainsWet', from: at, to: Math.min(words.length, at + 4) }
    : undefined
}

const sparks = matching(/^(?:spark(?:s|ed|ing)?|snap(?:s|ped)?|crackl\w*|arc(?:s|ed|ing)?)$/)
const isCrossed = matching(
  /^(?:revers\w*|swap\w*|wrong\w*|backwards?|polarity|red|black|plus|minus|positive|negative|crossed|melt\w*|burn\w*|smok\w*|bang|flash|blew|blown|dead|out|weld\w*|turn\w*|upside|flip\w*|other|round)$/,
)
/** "A spark when I plug it in": most are those of a sound one, and some of one that is crossed. */
export const isPlugSpark = ({ marked: { words } }: Told): boolean =>
  words.some(({ w }) => sparks(w)) &&
  words.some(({ w }) => /^(?:plug\w*|connect\w*)$/.test(w)) &&
  !words.some(({ w }) => isCrossed(w))

/** The first thing that its clause names is a device, and none that is charged stands between. */
function isSaidOfDevice(told: Told, words: readonly string[], at: number): boolean {
  const [from] = clauseAt(told, at)
  const before = words.slice(from, at)
  const device = before.findLastIndex(isDevice)
  if (device < 0 || before.slice(device).some(isPack)) return false
  const head = before.slice(0, device).filter(word => !isArticle(word))
  // "The pack on my charger": where it is; "the bottom of the charger", "the power supply": itself.
  return !head.some(isPack) || !isBeside(head.at(-1))
}

/** "A bit warm after flying", "still warm": said of the pack, that may still be too warm. */
export function isWarmPack(told: Told): boolean {
  const { words, denies } = told.marked
  const text = textOf(words)
  if (isOfDevice(told) || !(/\bstill (?:\w+ )?warm\b/.test(text) || isFlown.test(text))) return false
  return words.some(({ w }, at) => {
    const before = words.slice(Math.max(0, at - 5), at).map(one => one.w)
    return (
      w === 'warm' && before.some(isPack) && isLinked.test(before.join(' ')) && !denies.slice(at - 5, at).includes(true)
    )
  })
}
const isFlown =
  /\b(?:after|from) (?:the |a |my |this )?(?:flying|flights?|race|racing|landing|laps?|fly)\b|\bjust (?:flown|landed|flew)\b/
const isLinked =
  /\b(?:is|are|its|theyre|feels?|still|comes?|came|gets?)\b(?: (?:a|bit|little|quite|still|out|rather|slightly|pretty|all|lukewarm|and))*$/

const isRain = matching(/^(?:rains|raining|drizzl\w*|pours|pouring|snows|snowing|sleet|hails|hailing|storm|stormy)$/)
const isCharge = matching(/^(?:charg\w*|recharg\w*|mains|generator|plugged)$/)
const isUnder = matching(
  /^(?:inside|indoors|roof|garage|kitchen|house|home|hall|clubhouse|shed|dry|if|when|stopped|over|yesterday)$/,
)

/** "On the balcony, it rains a bit": a charge out in it, and nothing above it. */
export function isInRain({ marked: { words, denies } }: Told): boolean {
  const has = (one: (word: string | undefined) => boolean) => words.some(({ w }) => one(w))
  const isInIt = /\bin (?:the |heavy |light )?(?:rain|drizzle|snow)\b/.test(textOf(words))
  return (
    (has(isRain) || isInIt) && has(isCharge) && !has(isUnder) && !words.some(({ w }, at) => isRain(w) && denies[at - 1])
  )
}

const isMotor = matching(
  /^(?:motorbikes?|motorcycles?|bike|moped|scooter|mower|lawnmower|car|van|tractor|quad|petrol|fuel|gas|diesel|jerrycan|paint|thinner)$/,
)

/** "In the garage next to the motorbike": it stands there, with fuel in it. */
export const isBesideFuel = ({ marked: { words } }: Told): boolean =>
  words.some(({ w }) => isCharge(w)) &&
  words.some(({ w }, at) => {
    const before = textOf(words.slice(Math.max(0, at - 4), at))
    return isMotor(w) && /\b(?:next to|beside|near|close to)\b/.test(before)
  })

/** "Beside 20 other full packs": what would burn with it. */
export const isBesidePacks = ({ marked: { words } }: Told): boolean =>
  words.some(({ w }) => isCharge(w)) &&
  /\b(?:beside|next to|near|among|amid|on top of) (?:the |my |our |all )?(?:\d+ )?(?:other|others|full|spare|charged|pile of)(?: full| charged| spare)? (?:packs|lipos|batteries)\b/.test(
    textOf(words),
  )

const wasSo =
  /\b(?:yesterday|ago|last (?:night|week|weekend|month|year)|this morning|crossed|arrived)\b|\b(?:came|got|drove|rode|sailed) (?:off|over|across|back|here|home|from|to|by)\b|\bdrove \d|\btook (?:the|a|an|our) \w+ (?:over|to|across|here|home|back)\b|\bafter (?:(?:the|a|our) (?:\w+ )?(?:crossing|trip|drive|ride|journey|passage)|(?:driving|riding|sailing|travell?ing) (?:home|back|here|there|to|for|from|\d))\b/
const isAboard =
  /\b(?:aboard|on board|on deck|seats?|cabin|sockets?|while|during|underway|on the way|before (?:i|we) (?:get|land|arrive|dock))\b/
const charges = ['chargeRun', 'chargeAct'] as const
const isVehicle = matching(/^(?:ferry|ferries|boat|ship|train|bus|coach|plane|tram|crossing|car|van|boot|trunk)$/)

/** Whether every vehicle or drive is spoken of in a clause of what was, in which nothing is charged, and nobody is aboard. */
export function isTripOver(told: Told): boolean {
  const { words } = told.marked
  const trips = words.flatMap(({ w }, at) => (told.is(at, 'driving') || isVehicle(w) ? [at] : []))
  if (trips.length === 0 || isAboard.test(textOf(words))) return false
  return trips.every(at => {
    const [from, to] = clauseAt(told, at)
    const isCharged = words.slice(from, to).some((_, n) => charges.some(concept => told.is(from + n, concept)))
    return !isCharged && wasSo.test(textOf(words.slice(from, to)))
  })
}

const aboard =
  /\b(?:train|bus|coach|ferry|plane|tram|boat)\b.*\b(?:charg\w*|plug(?:ged)? (?:it|them)? ?in)\b(?: (?:it|them|the pack))? (?:on|in|aboard) (?:it|board|there|the (?:train|bus|coach|ferry|plane|tram|boat|way))\b/

/** "The train goes in half an hour and I charge on it": in what moves by then. */
export const chargedAboard: Relation = ({ marked: { words, denies } }) =>
  aboard.test(textOf(words)) && !denies.includes(true)
    ? { danger: 'movingVehicle', from: 0, to: words.length }
    : undefined

const isBoot = matching(/^(?:boot|trunk|car|van|truck|trailer)$/)
const carries = matching(
  /^(?:driv\w*|drove|carr\w*|bring\w*|brought|tak\w*|took|haul\w*|rid\w*|travel\w*|load\w*|pack|packed|tow\w*)$/,
)
const runs = matching(/^(?:runs?|ran|idl\w*|started|start|going)$/)
/** However it is spelt: what runs is no load. */
const isRunning = (word: string) => runs(word) || (word.startsWith('r') && distance(word, 'running') <= 2)
const isOn = /\b(?:generator|genny|is|its|switched|turned|left|still) on\b/

/** "A generator in the boot": it is carried, and does not run there. */
export function isCarried(told: Told): boolean {
  const { words } = told.marked
  const isOne = matching(/^(?:generators?|genny|gennies)$/)
  const all = words.flatMap(({ w }, at) => (isOne(w) ? [at] : []))
  return (
    all.length > 0 &&
    all.every(at => {
      const [from, to] = clauseAt(told, at)
      const clause = words.slice(from, to).map(({ w }) => w)
      return clause.some(isBoot) && clause.some(carries) && !clause.some(isRunning) && !isOn.test(clause.join(' '))
    })
  )
}

const isJoined = matching(
  /^(?:series|half|halves|bridg\w*|link\w*|join\w*|coupl\w*|ti(?:ed?|es)|fork\w*|harness|loom|jumper|cables?|ground|minus|together|still|makes?)$/,
)
const isLead = matching(/^(?:lead|leisure|car|starter|agm|gel|field)$/)

/** Two chargers on one battery that feeds them hang side by side on it: nothing says that packs are in series. */
export const isOneSource = ({ has, marked: { words } }: Told): boolean =>
  !has('seriesWords') &&
  !words.some(({ w }) => isJoined(w)) &&
  words.some(({ w }) => w === 'chargers') &&
  words.some(({ w }, at) => isLead(w) && (w === 'agm' || words[at + 1]?.w === 'battery' || words[at + 1]?.w === 'batt'))
