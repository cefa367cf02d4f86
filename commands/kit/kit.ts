// The kit: packs, chargers and sources saved by name, for the asker or for the club, which moderators look after.

import { changing } from '../../src/assistant/changing.ts'
import { optional, required, service } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { kitNameKind, newNameKind, refuseTakenName } from '../../src/assistant/kit/kit-name.ts'
import { ownersFor } from '../../src/assistant/kit/kit-names.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { sumOf } from '../../src/charging/numbers/sum.ts'
import { type Danger, dangers } from '../../src/charging/situation/dangers.ts'
import type { Charger } from '../../src/charging/things/charger.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Source } from '../../src/charging/things/source.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import { chargerKind, packKind, sourceKind } from '../../src/language/kinds/values.ts'
import type { KitEntry, KitKind } from '../../src/memory/kit.ts'
import type { Owner } from '../../src/memory/owner.ts'
import {
  fullKit,
  oneThing,
  onlyModeratorsChange,
  removesEntry,
  replacesEntry,
  takenName,
} from './kit-problems.words.ts'

type Whose = 'me' | 'club'
const whose = optional(choiceKind<Whose>('owner', ['me', 'club']))

/** The owner whose kit the asker wants to change. Throws a Problem where that takes a moderator. */
function ownerToChange(of: Whose, context: Context): Owner {
  const [own, club] = ownersFor(context)
  if (of === 'me') return own
  if (context.asker.moderates) return club
  throw onlyModeratorsChange
}

/** What fits a person's bag and a large club's sheds; more would be a mistake or a misuse. */
export const mostEntries: Readonly<Record<Owner['scope'], number>> = { person: 200, community: 10_000 }

const lasting = (Object.keys(dangers) as Danger[]).filter(danger => dangers[danger].stays === 'lasts')
const kitNoteKind = choiceKind<Danger | 'none'>('note', ['none', ...lasting])

export const kitSave = service({
  name: 'kit save',
  takes: {
    name: required(kitNameKind),
    pack: optional(packKind),
    charger: optional(chargerKind),
    source: optional(sourceKind),
    note: optional(kitNoteKind),
    for: whose,
  },
  examples: [
    'kit save name: wren pack: 3S 720 LiHV',
    'kit save name: bench charger: 0.3/0.8/1.5/3A 60W 1-5S 10-26V',
    'kit save name: shed source: 12V 10A',
  ],
  changes: true,
  confirm: async ({ name, for: of = 'me', ...gear }, context) => {
    const [before] = await context.memory.kit.find([ownerToChange(of, context)], [name])
    const { notation } = namedOne(name, gear, context)
    return before && before.notation !== notation ? replacesEntry(before, notation) : undefined
  },
  run: async ({ name, for: of = 'me', note, ...gear }, context) => {
    const owner = ownerToChange(of, context)
    const saved = { owner, name, ...namedOne(name, gear, context) }
    return changing(context, async ({ kit }) => {
      const [before] = await kit.find([owner], [name])
      // A note holds until it is taken off.
      const noted = note ?? before?.note
      const entry: KitEntry = { ...saved, note: saved.kind === 'pack' && noted !== 'none' ? noted : undefined }
      const most = mostEntries[owner.scope]
      if ((await kit.save(entry, most)) === 'full') throw fullKit(most, owner)
      const isSame = before?.notation === entry.notation && before.note === entry.note
      return {
        result: { entry, before: before?.notation === entry.notation ? undefined : before?.notation },
        change: isSame ? undefined : { of: 'kit', before, after: entry },
      }
    })
  },
})

interface Gear {
  readonly pack?: Pack | undefined
  readonly charger?: Charger | undefined
  readonly source?: Source | undefined
}

/** Throws a Problem for a name that is none, with one beside it that is free. */
function namedOne(name: string, gear: Gear, { vocabulary }: Context): Pick<KitEntry, 'kind' | 'notation'> {
  const one = theOneOf(gear)
  refuseTakenName(name, vocabulary, free => {
    const question = `kit save name: ${free} ${one.kind}: ${one.notation}`
    return { label: `save ${free} = ${one.notation}`, question }
  })
  return one
}

function theOneOf({ pack, charger, source }: Gear): Pick<KitEntry, 'kind' | 'notation'> {
  const given: Pick<KitEntry, 'kind' | 'notation'>[] = []
  if (pack) given.push({ kind: 'pack', notation: packKind.write(pack) })
  if (charger) given.push({ kind: 'charger', notation: chargerKind.write(charger) })
  if (source) given.push({ kind: 'source', notation: sourceKind.write(source) })
  const [only, ...others] = given
  if (only && others.length === 0) return only
  throw oneThing(given.length)
}

/** Of each owner; a longer list is no use in a chat, and a start of the name finds the rest. */
const mostShown = 30
const kinds: readonly KitKind[] = ['pack', 'charger', 'source']

export const kitList = service({
  name: 'kit list',
  takes: { starts: optional(kitNameKind), for: whose },
  examples: ['kit list', 'kit list starts: wr for: club'],
  notStanding: true,
  run: async ({ starts = '', for: wanted }, context) => {
    const { kit } = context.memory
    const [own, club] = ownersFor(context)
    const owners = [
      { whose: 'me', owner: own },
      { whose: 'club', owner: club },
    ] as const satisfies readonly { whose: Whose; owner: unknown }[]
    const kits = await Promise.all(
      owners
        .filter(one => wanted === undefined || one.whose === wanted)
        .map(async one => {
          const entries = await kit.startingWith([one.owner], starts, kinds, mostShown + 1)
          return {
            whose: one.whose,
            count: await kit.count(one.owner),
            entries: entries.slice(0, mostShown),
            more: entries.length > mostShown,
          }
        }),
    )
    return { kits, total: sumOf(kits.map(({ count }) => count)) }
  },
  figures: ({ total }) => [figure.count('savedNames', total)],
})

/** Gives something that is saved another name. */
export const kitRename = service({
  name: 'kit rename',
  takes: { name: required(kitNameKind), to: required(newNameKind), for: whose },
  examples: ['kit rename name: wren to: wren-old'],
  changes: true,
  run: async ({ name, to, for: of = 'me' }, context) => {
    const owner = ownerToChange(of, context)
    refuseTakenName(to, context.vocabulary)
    return changing(context, async ({ kit }) => {
      const [before] = await kit.find([owner], [name])
      const outcome = await kit.rename(owner, name, to)
      if (outcome === 'taken') throw takenName(to, owner)
      return { result: { owner, outcome }, change: before && { of: 'kit', before, after: { ...before, name: to } } }
    })
  },
})

/** Removes something that is saved by name. */
export const kitRemove = service({
  name: 'kit remove',
  takes: { name: required(kitNameKind), for: whose },
  examples: ['kit remove name: wren'],
  changes: true,
  confirm: async ({ name, for: of = 'me' }, context) => {
    const [entry] = await context.memory.kit.find([ownerToChange(of, context)], [name])
    return entry && removesEntry(entry)
  },
  run: async ({ name, for: of = 'me' }, context) => {
    const owner = ownerToChange(of, context)
    return changing(context, async ({ kit, log }) => {
      const [before] = await kit.find([owner], [name])
      const charges = await log.of(owner, name)
      await kit.remove(owner, name)
      const result = { owner, removed: before }
      return { result, change: before && { of: 'kit', before, log: charges } }
    })
  },
})
