// Whether somebody stays with a charge: whoever asks, somebody who is named, an adult who watches; or nobody who is awake.

import { isKnownWord } from '../../model/index.ts'
import { crossesClause, type Relation, type Told, textOf } from './relation.ts'

/** An adult is told to watch it, and no child, nobody who sleeps or leaves. */
export function isMinded(told: Told): boolean {
  const { words, denies } = told.marked
  if (told.has('child') || denies.includes(true) || words.some(({ w }) => leaves.test(w))) return false
  return words.some(
    (_, at) => told.is(at, 'grownUp') && words.slice(at + 1, at + 6).some((_, n) => told.is(at + 1 + n, 'minds')),
  )
}
const leaves =
  /^(?:bed|sleep\w*|asleep|nap|doz\w*|while|until|sometimes|half|phone|camera|away|leaves?|goes|go|tv|upstairs|now|if)$/

/** "I sit next to it with my breakfast": whoever asks says that they stay, and nothing of sleep, of leaving or of others. */
export function isStaying({ marked: { words, denies } }: Told): boolean {
  const text = words.map(({ w, cut }) => (cut > 0 ? `, ${w}` : w)).join(' ')
  return staysBeside.test(text) && !mayLeave.test(text) && !denies.includes(true)
}
const staysBeside =
  /\b(?:sit|sits|sitting|stay|stays|staying|stand|standing|cook|cooking|read|reading|work|working|watch|watching|am|im|be|eat|eating)\b[^,]{0,25}\b(?:beside|next to|near|in sight of) (?:it|them|the chargers?|the packs?|both)\b|\b(?:sit|sitting|stay|staying) (?:with|by) (?:it|them)\b|\bwatching (?:it|them)\b/
const mayLeave =
  /\b(?:sleep\w*|asleep|nap\w*|doz\w*|bed|leav\w*|left|away|gone|go|goes|going|out|off(?! (?:this|today|work|duty|shift))|shop\w*|shower|until|till|sometimes|half|kids?|son|daughter|child\w*|girl|boy|dog|never|nobody|camera|phone|if|used|beats|instead|then|now|driv\w*|car|beer|drunk|tired)\b/

/** "Jana stays at the table the whole time": somebody else is with it, no child, nobody who may be asleep by then. */
export function isKept(told: Told): boolean {
  const { words, denies } = told.marked
  if (told.has('child') || told.has('pet') || words.some(({ w }) => mayEnd.test(w))) return false
  return words.some((_, at) => {
    const who = words[at - 1]
    // A word that is known and no person's is a thing; one that is not may be a name.
    const isPerson = told.is(at - 1, 'grownUp') || (who?.value === undefined && !isKnownWord(who?.w ?? ''))
    const isSomebody = who !== undefined && isPerson && !ofNobody.test(who.w) && !denies[at]
    const behind = textOf(words.slice(at, at + mostToPlace))
    return isSomebody && staysThere.test(behind)
  })
}
const mostToPlace = 9
const staysThere =
  /^(?:stays|sits|stands|remains|(?:will|is|are) (?:stay|sit|stand|remain|staying|sitting|standing)) (?:\w+ ){0,3}?(?:at the (?:table|bench|chargers?)|beside|next to|with (?:it|them|the (?:packs?|chargers?))|by (?:it|them|the (?:packs?|chargers?))|over (?:it|them)|in front of (?:it|them))\b/
const ofNobody = /^(?:never|hardly|rarely|nobody|noone|one|anybody|anyone|who|that|which|what|there|i|we|you)$/
const mayEnd =
  /^(?:bed|sleep\w*|asleep|nap\w*|doz\w*|until|till|til|sometimes|half|mostly|usually|phone|webcam|camera|tv|telly|beer|drunk|if|used|would|could|should)$/

/** "Nobody in my class knows": nobody of whom it is said that they stay. */
export function isOfKnowing(told: Told): boolean {
  const { words } = told.marked
  const none = words.flatMap(({ w }, at) => (/^(?:nobody|noone)$/.test(w) || isNoOne(words, at) ? [at] : []))
  const knowing = none.map(from => words.findIndex(({ w }, at) => at > from && at < from + mostToVerb && knows.test(w)))
  const isAside = none.some(
    (from, n) => crossesClause(told, from, knowing[n] ?? 0) || is.test(words[from + 1]?.w ?? ''),
  )
  const isWhere = (at: number) => none.some((from, n) => at >= from && at < (knowing[n] ?? 0))
  const isLeft = words.some((_, at) => !isWhere(at) && absences.some(one => told.is(at, one)))
  return none.length > 0 && !knowing.includes(-1) && !isAside && !isLeft
}
const absences = ['notThere', 'sleep', 'leaveIt', 'overnight', 'backAgain', 'byTimer', 'errand', 'elsewhere'] as const
const is = /^(?:is|was|will|would|there|home|around|watch\w*|stays?|sits?)$/
const mostToVerb = 6
const isNoOne = (words: Told['marked']['words'], at: number) => words[at]?.w === 'no' && words[at + 1]?.w === 'one'
const knows =
  /^(?:knows?|tells?|told|says?|said|explains?|explained|answers?|answered|understands?|believes?|agrees?|can)$/

const asleep =
  /\b(?:stays?|staying|sits?|sitting|lies|lying) (?:\w+ ){1,4}?(?:fast |half |sound |dead )?(?:asleep|sleeping|snoring|dozing|napping)\b/
const allNight =
  /\b(?:let (?:it|them) (?:have|take|run|go)|give (?:it|them)|(?:it|they) (?:can|may) (?:have|take)) (?:the |all |it )*(?:all night|whole night|night|until (?:the )?morning|till (?:the )?morning)\b/

/** "Nipping over to the salon, back at 5". */
const nips =
  /\b(?:nip|nips|nipping|pop|pops|popping|dash|dashes|dashing|hop|hopping|shoot|shooting|slip|slipping) (?:\w+ ){0,2}?(?:to|out|over|down|round|up|into|off)\b.*\bback (?:at|by|in|for|around|before|later|soon|home)\b/
/** Then nothing charges while they are gone. */
const isOver = /\b(?:unplug\w*|disconnect\w*|before|after|once|when|done|finished|took|taken|stays? with)\b/

/** "My brother sits at the bench asleep", "let it have all night", "nipping to the salon, back at 5": nobody is awake beside it. */
export const nobodyAwake: Relation = ({ marked: { words, denies } }) => {
  const text = textOf(words)
  const gone = isOver.test(text) ? null : nips.exec(text)
  const found = denies.includes(true) ? null : (asleep.exec(text) ?? allNight.exec(text) ?? gone)
  if (!found) return undefined
  const from = text.slice(0, found.index).split(' ').length - 1
  return { danger: 'unattended', from, to: from + found[0].split(' ').length }
}
