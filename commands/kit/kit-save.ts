// Saves a pack, a charger or a source under a name that then stands for it in questions.

import { changing } from '../../src/assistant/changing.ts'
import { optional, required, service } from '../../src/assistant/command.ts'
import { kitNameKind, refuseTakenName } from '../../src/assistant/kit/kit-name.ts'
import { type Danger, dangers } from '../../src/charging/situation/dangers.ts'
import type { Charger } from '../../src/charging/things/charger.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Source } from '../../src/charging/things/source.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import { chargerKind, packKind, sourceKind } from '../../src/language/kinds/values.ts'
import type { KitEntry } from '../../src/memory/memory.ts'
import type { Owner } from '../../src/memory/owner.ts'
import { ownerToChange, whose } from './kit-owner.ts'
import { fullKit, oneThing, replacesEntry } from './kit-problems.words.ts'

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
    const { notation } = theOneOf(gear)
    return before && before.notation !== notation ? replacesEntry(before, notation) : undefined
  },
  run: async ({ name, for: of = 'me', note, ...gear }, context) => {
    const { vocabulary } = context
    const owner = ownerToChange(of, context)
    refuseTakenName(name, vocabulary)
    const saved = { owner, name, ...theOneOf(gear) }
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

function theOneOf({ pack, charger, source }: Gear): Pick<KitEntry, 'kind' | 'notation'> {
  const given: Pick<KitEntry, 'kind' | 'notation'>[] = []
  if (pack) given.push({ kind: 'pack', notation: packKind.write(pack) })
  if (charger) given.push({ kind: 'charger', notation: chargerKind.write(charger) })
  if (source) given.push({ kind: 'source', notation: sourceKind.write(source) })
  const [only, ...others] = given
  if (only && others.length === 0) return only
  throw oneThing(given.length)
}
