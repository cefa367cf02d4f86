// What is stored that a missing name or title may be: offered as choices, the likeliest first.

import { shortened } from '../../ground/plain-text.ts'
import type { Missing } from '../../language/reading/fit.ts'
import type { StandardAnswer } from '../../memory/standard-answer.ts'
import { newTitleKind, titleKind } from '../cards/title.ts'
import type { Entry } from '../command.ts'
import type { Context } from '../context.ts'
import { namesStartingWith } from '../kit/kit-names.ts'
import { titlesLike } from '../naming/titles.ts'

const mostChoices = 4

/** Undefined where nothing that is stored would do. */
export async function storedFor(
  missing: Missing,
  { takes, name }: Entry,
  options: Readonly<Record<string, string>>,
  text: string,
  answers: readonly StandardAnswer[],
  context: Context,
): Promise<readonly string[] | undefined> {
  const kind = kindOf(missing, takes)
  if (kind === undefined) return undefined
  if (kind === newTitleKind.name) return titleFor(options)
  if (name === 'kit save') return namesFor(options)
  const found =
    kind === titleKind.name
      ? titlesLike(
          text,
          answers.map(({ title }) => title),
        ).ranked.slice(0, mostChoices)
      : await namesStartingWith('', kind, mostChoices, context.lookup.memory.kit, context)
  return found.length > 0 ? found : undefined
}

/** What is to be kept, in few words. */
function titleFor({ question, text }: Readonly<Record<string, string>>): readonly string[] | undefined {
  const words =
    question?.replace(/ told: .*$/, '').replace(/^handbook about: |[\w-]+: /g, '') ?? text?.split(/[.:;!?]/)[0]
  return words ? [shortened(words)] : undefined
}

/** New ones: what is saved already would be overwritten. */
function namesFor({ pack = '', charger, source }: Readonly<Record<string, string>>): readonly string[] {
  const thing = /(\d+)mAh/.exec(pack)?.[1] ?? (charger ? 'charger' : source ? 'supply' : 'pack')
  return ['my', 'red', 'spare'].map(first => `${first}-${thing}`)
}

/** Of a standard answer that is there, not of one to be saved. */
export const takesTitle = (missing: Missing, { takes, name }: Entry): boolean =>
  kindOf(missing, takes) === titleKind.name && name !== 'answer save'

const kindOf = (missing: Missing, takes: Entry['takes']): string | undefined =>
  missing === 'capacity' || 'cells' in missing ? undefined : takes[missing.option]?.kind.name
