// Where and by whom a charge is kept: children's rooms, those where people sleep, children alone.

import { clauseAt, type Relation, type Told, textOf } from './relation.ts'

const charged = /^(?:charg\w*|recharg\w*|plugged|trickle)$/
const childrens = /^(?:nursery|playroom|cot|crib|kindergarten)$/
const rooms = /^(?:bed)?rooms?$/
const sleeps = /^(?:bedrooms?|dorm|dormitory|bunkroom)$/
const places = /^(?:in|inside|beside|by|at|near|next|to|under|into)$/
const owners = /^(?:kids|childs|childrens|sons|daughters|boys|girls|babys|toddlers|grandsons|grandkids|little|ones)$/
const mostBefore = 4

/** "He is 9 and charges alone in his room". */
export const childAlone: Relation = told => {
  const { words, denies } = told.marked
  const charges = words.findIndex(({ w }) => charged.test(w))
  const alone = words.findIndex((_, at) => told.is(at, 'byThemselves'))
  if (charges < 0 || alone < 0 || Math.abs(alone - charges) > mostApart || !told.has('child')) return undefined
  // Another one is meant: "alone with me", "never alone".
  const isWith = words.slice(alone, alone + 3).some(({ w }) => w === 'with')
  const isDenied = denies.slice(Math.max(0, Math.min(alone, charges) - 4), alone + 1).includes(true)
  const who = words
    .slice(0, alone)
    .findLastIndex(({ w }, at) => !pronouns.test(w) && (told.is(at, 'child') || told.is(at, 'grownUp')))
  const isAdult = who >= 0 && !told.is(who, 'child')
  return isWith || isDenied || isAdult ? undefined : { danger: 'children', from: charges, to: alone + 1 }
}
const mostApart = 8
const pronouns = /^(?:he|she|hes|shes|they|theyre)$/

/** "I am 12, can I charge": who asks is a child, and names nobody beside. */
export function isChildAsking({ marked: { words } }: Told): boolean {
  const age = words.findIndex(
    ({ value }, at) =>
      value !== undefined && value >= 5 && value <= youngest && /^(?:im|am)$/.test(words[at - 1]?.w ?? ''),
  )
  const isAge =
    age >= 0 && ((words[age + 1]?.cut ?? 2) > 0 || /^(?:and|so|but|years?|yrs?|old)$/.test(words[age + 1]?.w ?? ''))
  return isAge && words.some(({ w }) => charged.test(w)) && !words.some(({ w }) => adults.test(w))
}
const youngest = 15
const adults =
  /^(?:mums?|moms?|dads?|mother|father|parents?|adult|grandpa|grandad|grandma|gran|uncle|aunt|teacher|trainer|coach)$/

/** "With kids around": they are near it. */
export function isAmongChildren({ is, marked: { words, denies } }: Told): boolean {
  const isNear = ({ w }: { readonly w: string }, at: number) =>
    near.test(w) &&
    [1, 2, 3].some(back => at >= back && is(at - back, 'child')) &&
    !denies.slice(Math.max(0, at - 4), at).includes(true)
  return words.some(isNear) && words.some(({ w }) => charged.test(w))
}
const near = /^(?:around|running|playing|nearby|underfoot)$/

/** "My son does it after school", and nobody is told beside. */
export function isDoneByChild({ is, marked: { words, denies } }: Told): boolean {
  const isDone = ({ w }: { readonly w: string }, at: number) =>
    doing.test(w) &&
    (/^do(?:es)?$/.test(w) ? pointed : owned).test(words[at + 1]?.w ?? '') &&
    !denies.slice(Math.max(0, at - 2), at + 1).includes(true)
  const at = words.findIndex((word, n) => isDone(word, n) && [1, 2].some(back => n >= back && is(n - back, 'child')))
  return at >= 0 && !words.some(({ w }, n) => is(n, 'grownUp') || w === 'with' || w === 'together')
}
const [pointed, owned] = [/^(?:it|them|that|this)$/, /^(?:it|them|that|this|the|his|her|their|my|our)$/]
const doing = /^(?:do|does|charges?|plugs?|handles?|manages?|starts?|runs?)$/

/** Where one of these rooms is told behind a word of place, in a clause that charges and denies nothing. */
function roomIn(told: Told, isRoom: (at: number) => boolean): number | undefined {
  const { words, denies } = told.marked
  const at = words.findIndex(
    (_, at) => isRoom(at) && words.slice(Math.max(0, at - mostBefore), at).some(({ w }) => places.test(w)),
  )
  if (at < 0) return undefined
  const [from, to] = clauseAt(told, at)
  const isCharged = words.slice(from, to).some(({ w }) => charged.test(w))
  return isCharged && !denies.slice(from, to).includes(true) ? at : undefined
}

/** "Charging in the kids' bedroom". */
export const childrensRoom: Relation = told => {
  const { words } = told.marked
  const isOfChild = (at: number) => [1, 2].some(back => owners.test(words[at - back]?.w ?? ''))
  const at = roomIn(told, at => {
    const { w } = words[at] ?? { w: '' }
    return childrens.test(w) || (rooms.test(w) && isOfChild(at))
  })
  return at === undefined ? undefined : { danger: 'children', from: at, to: at + 1 }
}

/** "Charging in the bedroom": whether somebody is awake there is open. */
export const isWhereOneSleeps = (told: Told): boolean =>
  roomIn(told, at => sleeps.test(told.marked.words[at]?.w ?? '')) !== undefined

const asksToGo =
  /\b(?:can|may|could) (?:i|we) (?:just |safely |then |also )?leave (?:the|my|our) (?:room|house|home|flat|garage|building|shed|workshop|kitchen|clubhouse|place)\b(?! door)/
const isOver = /\b(?:when|once|after|as soon as)\b.*\b(?:done|finish\w*|over|off|unplug\w*|ended|ends)\b/
const aboutCharge = /\b(?:charg\w*|amps?|current|plugged|minutes|how long)\b/

/** "What amps, and can I leave the room": asked of a charge, whatever else is. */
export const leavesRoom: Relation = told => {
  const { words, denies } = told.marked
  const at = words.findIndex(({ w }) => w === 'leave')
  const text = textOf(words)
  const isAsked =
    asksToGo.test(text) && aboutCharge.test(text) && !isOver.test(text) && !denies.slice(0, at).includes(true)
  return isAsked ? { danger: 'unattended', from: at, to: at + 3 } : undefined
}

/** "How close must I sit": asked by somebody who stays. */
const asksDistance = /^how (?:close|near|far)\b.*\b(?:sit|stay|stand|be)\b/

/** "The workshop charger", "the key of the office charger": which one is meant, and nobody goes there. */
export function isPlaceOfCharger(told: Told): boolean {
  const { words } = told.marked
  const places = words.flatMap((_, at) => (told.is(at, 'errand') ? [at] : []))
  if (asksDistance.test(textOf(words)) && !told.has('elsewhere')) return true
  return (
    places.length > 0 &&
    places.every(at => /^(?:chargers?|supply|board)$/.test(words[at + 1]?.w ?? '') && words[at + 1]?.cut === 0) &&
    !told.has('sleep') &&
    !told.has('notThere') &&
    !told.has('leaveIt')
  )
}
