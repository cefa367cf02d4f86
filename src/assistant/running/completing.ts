// What an option may go on with, as somebody types it.

import { present } from '../../ground/present.ts'
import type { Frame } from '../../language/frames/frame.ts'
import type { Memory } from '../../memory/memory.ts'
import { titleKind, titlesStartingWith } from '../cards/title.ts'
import type { FaultListener } from '../fault-listener.ts'
import { kitNameKind } from '../kit/kit-name.ts'
import { namesStartingWith } from '../kit/kit-names.ts'
import type { Occasion } from '../occasion.ts'
import type { Registry } from '../registry.ts'

/** Up to 25 values for an option that start as `prefix` does: saved names first. Never throws. */
export type Complete = (
  command: string,
  option: string,
  prefix: string,
  occasion: Occasion,
) => Promise<readonly string[]>

/** Up to 25 whole sentences that begin as these words do: with saved names, and the packs that were spoken of last. */
export type Suggest = (words: string, occasion: Occasion) => Promise<readonly string[]>

interface CompletingParts {
  readonly registry: Registry
  readonly memory: () => Pick<Memory, 'answers' | 'kit'>
  /** The asker's last question there. */
  readonly frameOf: (occasion: Occasion) => Frame | undefined
  readonly onFault: FaultListener
}

const most = 25

export function completerOf(parts: CompletingParts): { readonly complete: Complete; readonly suggest: Suggest } {
  const { registry, memory, frameOf, onFault } = parts

  async function savedStartingWith(prefix: string, kind: string, occasion: Occasion): Promise<readonly string[]> {
    try {
      if (kind === titleKind.name) return await titlesStartingWith(prefix, memory().answers, occasion)
      return await namesStartingWith(prefix, kind, most, memory().kit, occasion)
    } catch (fault) {
      onFault(fault, `completing a ${kind}`)
      return []
    }
  }

  return {
    async complete(command, option, prefix, occasion) {
      const kind = registry.find(command)?.takes[option]?.kind
      if (!kind) return []
      const saved = await savedStartingWith(prefix, kind.name, occasion)
      return [...new Set([...saved, ...kind.complete(prefix)])].slice(0, most)
    },
    async suggest(words, occasion) {
      const [last = ''] = /\S*$/.exec(words) ?? []
      const before = words.slice(0, words.length - last.length)
      const packs = packsIn(frameOf(occasion)).filter(pack => !words.includes(pack))
      const names = await savedStartingWith(last, kitNameKind.name, occasion)
      const meant = [...names, ...packs.filter(pack => pack.toLowerCase().startsWith(last.toLowerCase()))]
      const further = last === '' ? [] : packs.map(pack => `${words} ${pack}`)
      return [...new Set([...meant.map(one => before + one), ...further])].slice(0, most)
    },
  }
}

/** In notation, the last one first. */
function packsIn(frame: Frame | undefined): readonly string[] {
  if (!frame) return []
  const { pack } = frame.question.options
  return [...new Set(present([pack, ...packsIn(frame.before)]))]
}
