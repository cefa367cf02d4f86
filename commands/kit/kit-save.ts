// Saves a pack, a charger or a source under a name that then stands for it in questions.

import { kitNameKind, refuseTakenName } from '../../src/assistant/kit/kit-name.ts'
import { defineCommand, optional, required } from '../../src/assistant/old-command.ts'
import { cautionsFor } from '../../src/cautions/cautions.ts'
import type { Charger } from '../../src/charging/things/charger.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Source } from '../../src/charging/things/source.ts'
import { Problem } from '../../src/ground/problem.ts'
import { chargerKind, packKind, sourceKind } from '../../src/language/kinds/values.ts'
import type { KitEntry } from '../../src/memory/memory.ts'
import type { Owner } from '../../src/memory/owner.ts'
import { inWhoseKit, ownerToChange, whoseOption } from './kit-owner.ts'

/** What fits a person's bag and a large club's sheds; more would be a mistake or a misuse. */
export const mostEntries: Readonly<Record<Owner['scope'], number>> = { person: 200, community: 10_000 }

export const kitSave = defineCommand({
  name: 'kit save',
  summary: 'Saves a pack, charger or source by name, for you or for the club.',
  options: {
    name: required(kitNameKind, { description: 'the name, as you would say it' }),
    pack: optional(packKind, { description: 'the pack that the name stands for' }),
    charger: optional(chargerKind, { description: 'or the charger' }),
    source: optional(sourceKind, { description: 'or the source' }),
    for: whoseOption('me (if you say nothing) or club, which only moderators change'),
  },
  examples: [
    'kit save name: wren pack: 3S 720 LiHV',
    'kit save name: bench charger: 0.5/1/2/4A 80W 1-4S 9-20V',
    'kit save name: shed source: 12V 10A',
  ],
  plainWords: ['save my', 'save a', 'save this'],
  changes: true,
  answer: async ({ name, for: whose = 'me', ...gear }, context) => {
    const { memory, vocabulary } = context
    const owner = ownerToChange(whose, context)
    refuseTakenName(name, vocabulary)
    const entry: KitEntry = { owner, name, ...theOneOf(gear) }
    const [earlier] = await memory.kit.find([owner], [name])
    const outcome = await memory.kit.save(entry, mostEntries[owner.scope])
    if (outcome === 'full') throw fullKit(owner)
    const before =
      earlier && earlier.notation !== entry.notation ? ` Before, it stood for ${earlier.notation}.` : ''
    return {
      headline: `Saved: ${name} stands for ${entry.notation} ${inWhoseKit(owner)}.${before}`,
      working: [`Write the name wherever you would write the ${entry.kind}: "${entry.kind}: ${name}".`],
      cautions: cautionsFor(gear),
    }
  },
})

interface Gear {
  readonly pack?: Pack
  readonly charger?: Charger
  readonly source?: Source
}

function theOneOf({ pack, charger, source }: Gear): Pick<KitEntry, 'kind' | 'notation'> {
  const given: Pick<KitEntry, 'kind' | 'notation'>[] = []
  if (pack) given.push({ kind: 'pack', notation: packKind.write(pack) })
  if (charger) given.push({ kind: 'charger', notation: chargerKind.write(charger) })
  if (source) given.push({ kind: 'source', notation: sourceKind.write(source) })
  const [only, ...others] = given
  if (only && others.length === 0) return only
  throw new Problem({
    what: only ? 'A name stands for one thing.' : 'I need to know what the name stands for.',
    expected: 'one of pack, charger and source',
    example: 'kit save name: wren pack: 3S 720 LiHV',
  })
}

function fullKit(owner: Owner): Problem {
  return new Problem({
    what: `There are ${mostEntries[owner.scope]} entries ${inWhoseKit(owner)}; no more fit.`,
    expected: 'a name that is saved already, or remove one first',
    example: `kit remove name: wren${owner.scope === 'community' ? ' for: club' : ''}`,
  })
}
