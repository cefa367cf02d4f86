// What an option may go on with, as somebody types it.

import type { Memory } from '../../memory/memory.ts'
import { titleKind, titlesStartingWith } from '../cards/title.ts'
import type { FaultListener } from '../fault-listener.ts'
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

const most = 25

export function completerOf(
  registry: Registry,
  memory: () => Pick<Memory, 'answers' | 'kit'>,
  onFault: FaultListener,
): Complete {
  async function savedStartingWith(prefix: string, kind: string, occasion: Occasion): Promise<readonly string[]> {
    try {
      if (kind === titleKind.name) return await titlesStartingWith(prefix, memory().answers, occasion)
      return await namesStartingWith(prefix, kind, most, memory().kit, occasion)
    } catch (fault) {
      onFault(fault, `completing a ${kind}`)
      return []
    }
  }

  return async (command, option, prefix, occasion) => {
    const kind = registry.find(command)?.takes[option]?.kind
    if (!kind) return []
    const saved = await savedStartingWith(prefix, kind.name, occasion)
    return [...new Set([...saved, ...kind.complete(prefix)])].slice(0, most)
  }
}
