// Takes a change back: what it changed becomes what it was, unless somebody has changed it since.

import { isDeepStrictEqual } from 'node:util'
import { changing } from '../../src/assistant/changing.ts'
import type { Context } from '../../src/assistant/context.ts'
import type { AnswerKept, Change, Memory, NotedChange } from '../../src/memory/memory.ts'
import { mostAnswers } from '../answers/answer-save.ts'
import { answerKept } from '../answers/standing-answer.ts'
import { standingRules } from '../club/house-changes.ts'
import { mostEntries } from '../kit/kit-save.ts'
import { changedSince } from './undo-problems.words.ts'

/** Throws a Problem where it was changed since, by whomever. */
export async function takeBack(noted: NotedChange, context: Context): Promise<void> {
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
