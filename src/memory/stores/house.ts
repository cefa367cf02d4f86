// The rules that moderators have set for their community.

import type { Selectable } from 'kysely'
import { z } from 'zod'
import { allEnds } from '../../charging/things/charge-end.ts'
import { asked, type Database, inTransaction, type Tables } from '../database.ts'
import type { HouseChange, HouseMemory, HouseRules } from '../memory.ts'

export function houseMemory(db: Database): HouseMemory {
  const rowsOf = asked<Row, [community: string]>(db, () =>
    db.selectFrom('house').selectAll().where('community', '=', ''),
  )
  return {
    async rules(community) {
      return rulesFrom(await rowsOf(community))
    },
    async everyones() {
      const rows = await db.selectFrom('house').selectAll().execute()
      const ofEach = [...Map.groupBy(rows, ({ community }) => community)]
      return new Map(
        ofEach.flatMap(([community, theirs]) => {
          const rules = readable(theirs)
          return rules ? [[community, rules] as const] : []
        }),
      )
    },
    change: (community, changes) =>
      inTransaction(db, async transaction => {
        for (const change of changes.toSorted(inOneOrder)) {
          const chemistry = 'chemistry' in change ? change.chemistry : everyChemistry
          const key = { community, rule: change.rule, chemistry }
          if (change.value === null) {
            await transaction
              .deleteFrom('house')
              .where(({ and }) => and(key))
              .execute()
            continue
          }
          const value = JSON.stringify(change.value)
          await transaction
            .insertInto('house')
            .values({ ...key, value })
            .onConflict(conflict => conflict.columns(['community', 'rule', 'chemistry']).doUpdateSet({ value }))
            .execute()
        }
      }),
  }
}

type Row = Selectable<Tables['house']>

/** Every writer locks the rows in the same order, so that two of them never wait for each other. */
const inOneOrder = (a: HouseChange, b: HouseChange): number => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1)

/** In place of a chemistry for a rule that is about none. */
const everyChemistry = ''

const ofChemistries = z.record(z.string(), z.number())
const limits = z.object({
  maxRate_C: ofChemistries.optional(),
  fullPerCell_V: ofChemistries.optional(),
  storagePerCell_V: ofChemistries.optional(),
  sourceFloorPerCell_V: ofChemistries.optional(),
  coldest_C: z.number().optional(),
  gentleLiIon: z.boolean().optional(),
  chargeEnd: z.union([z.enum(allEnds), z.number().positive()]).optional(),
})

/** Throws where a limit cannot be read: left out, or compared as something else, it would be lifted unseen. */
function rulesFrom(rows: readonly Row[]): HouseRules {
  const rules: Record<string, unknown> = {}
  for (const { rule, chemistry, value: json } of rows) {
    const value: unknown = JSON.parse(json)
    rules[rule] = chemistry === everyChemistry ? value : { ...(rules[rule] as object), [chemistry]: value }
  }
  limits.parse(rules)
  return rules as HouseRules
}

/** The fault of one community is told where it asks, and stops no other. */
function readable(rows: readonly Row[]): HouseRules | undefined {
  try {
    return rulesFrom(rows)
  } catch {
    return undefined
  }
}
