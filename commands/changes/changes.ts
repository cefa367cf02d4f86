// Who changed what in a club, and how whoever did takes it back: it becomes what it was, unless it was changed since.

import { isDeepStrictEqual } from 'node:util'
import { titleKind } from '../../src/assistant/cards/title.ts'
import { changing } from '../../src/assistant/changing.ts'
import { type Asked, optional, service } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import type { AnswerKept, Change, Memory, NotedChange } from '../../src/memory/memory.ts'
import { undoable_ms } from '../../src/memory/retention.ts'
import { mostAnswers } from '../answers/answers.ts'
import { answerKept } from '../answers/stored-answer.ts'
import { standingRules } from '../club/house-changes.ts'
import { mostEntries } from '../kit/kit.ts'
import { changedSince, onlyModeratorsUndo, takesBack } from './change.words.ts'

/** What fits a screen; who looks for more wants the backup. */
const mostShown = 10
const mostLooked = 200

const matters = ['rules', 'answers', 'kit'] as const
type Matter = (typeof matters)[number]

/** Whether a change is of that; of anything where nothing is said. */
const ofMatter =
  (about: Matter | undefined) =>
  ({ change }: NotedChange): boolean =>
    about === undefined || change.of === (about === 'answers' ? 'answer' : about)

export const history = service({
  name: 'history',
  shelf: 'club history',
  takes: { about: optional(choiceKind('matter', matters)) },
  examples: ['history', 'history about: rules'],
  notStanding: true,
  run: async ({ about }, { memory, community }) => {
    const all = await memory.history.latest(community.id, mostLooked)
    return { changes: all.filter(ofMatter(about)).slice(0, mostShown) }
  },
  figures: ({ changes }) => [figure.count('changes', changes.length)],
})

/** Throws a Problem where it was changed since, by whomever. */
async function takeBack(noted: NotedChange, context: Context): Promise<void> {
  const { change } = noted
  if (change.of === 'answer') return takeBackAnswer(noted, change, context)
  await changing(
    context,
    async memory => {
      if (change.of === 'rules') await restoreRules(change, context.community.id, memory)
      else await restoreKit(change, memory)
      return { result: undefined, change: reversed(change) }
    },
    noted,
  )
}

type Of<K extends Change['of']> = Extract<Change, { readonly of: K }>

const reversed = (change: Change): Change => ({ ...change, before: change.after, after: change.before }) as Change

async function restoreRules({ before, after }: Of<'rules'>, community: string, { house }: Memory): Promise<void> {
  refuseOther(standingRules(after, await house.rules(community)), after)
  await house.change(community, before)
}

async function restoreKit({ before, after, log: charges = [] }: Of<'kit'>, { kit, log }: Memory): Promise<void> {
  const changed = after ?? before
  if (!changed) return
  const { owner, name } = changed
  const [standing] = await kit.find([owner], [name])
  refuseOther(standing, after)
  if (before && after && before.name !== after.name) {
    if ((await kit.rename(owner, after.name, before.name)) !== 'renamed') throw changedSince
  } else if (before) {
    if ((await kit.save(before, mostEntries[owner.scope])) === 'full') throw changedSince
    for (const charge of charges) await log.add(charge, charges.length)
  } else await kit.remove(owner, name)
}

/** Its card comes back, goes or moves with it. */
async function takeBackAnswer(noted: NotedChange, change: Of<'answer'>, context: Context): Promise<void> {
  const { before, after } = change
  const { community } = context
  const gone = await changing(
    context,
    async ({ answers }) => {
      const standing = await answers.get((after ?? before)?.id ?? '')
      refuseOther(standing && answerKept(standing), after)
      const outcome = before
        ? after
          ? await answers.change(before.id, sayingOf(before))
          : await answers.add({ ...before, community: community.id }, mostAnswers)
        : await answers.remove(after?.id ?? '')
      if (outcome === 'taken' || outcome === 'full') throw changedSince
      return { result: before ? undefined : standing, change: reversed(change) }
    },
    noted,
  )
  await context.afterwards(async ({ cards }) => {
    if (gone) await cards.takeAway(gone)
    else if (before && before.place !== after?.place) await cards.post(before.id, before.place)
  })
}

/** Its place goes back with its card. */
const sayingOf = ({ title, kind, content, canonical }: AnswerKept) => ({ title, kind, content, canonical })

/** As it would be read back. */
const plain = (value: unknown): unknown => (value === undefined ? value : JSON.parse(JSON.stringify(value)))

function refuseOther(standing: unknown, left: unknown): void {
  if (!isDeepStrictEqual(plain(standing), plain(left))) throw changedSince
}

/** Takes back the asker's own last change, for ten minutes. */
const changedKind: ValueKind<string> = { ...titleKind, name: 'changed' }
const takes = { about: optional(choiceKind('matter', matters)), of: optional(changedKind) }

export const undo = service({
  name: 'undo',
  shelf: 'club undo',
  takes,
  examples: ['undo', 'undo about: rules'],
  changes: true,
  /** Where something else was spoken of in between it may not be what is meant. */
  confirm: async (asked, context, isNext) => {
    const { last, isTooOld } = await lastOf(asked, context)
    return last && !isTooOld && !isNext ? takesBack(last.change) : undefined
  },
  /** The last change, and whether it is taken back: it is not where it is too old. */
  run: async (asked, context) => {
    const { last, isTooOld } = await lastOf(asked, context)
    if (last && !isTooOld) await takeBack(last, context)
    return { last, isTooOld }
  },
})

/** What the changed thing is called, and was. */
const namesOf = ({ change }: NotedChange): readonly string[] =>
  change.of === 'rules'
    ? []
    : [change.before, change.after].flatMap(one => (one ? ('title' in one ? one.title : one.name).toLowerCase() : []))

async function lastOf({ about, of }: Asked<typeof takes>, { memory, asker, community, now = new Date() }: Context) {
  const [last] = (await memory.history.changesOf(asker.id, community.id)).filter(
    noted => ofMatter(about)(noted) && (of === undefined || namesOf(noted).includes(of.toLowerCase())),
  )
  const isTooOld = last !== undefined && now.getTime() - last.at.getTime() > undoable_ms
  // Who moderates no longer changes nothing any longer.
  if (last?.scope === 'community' && !isTooOld && !asker.moderates) throw onlyModeratorsUndo
  return { last, isTooOld }
}
