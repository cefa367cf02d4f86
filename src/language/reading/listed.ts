// Several packs of a sentence as the list that one detail takes: "4x 6S 5000mAh LiPo; 2S 450mAh LiPo at 3.8V".

import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'
import { wholePack } from './told-pack.ts'

export interface Listed {
  readonly option: string
  readonly text: string
  readonly used: ReadonlySet<Candidate>
}

const listKinds: ReadonlySet<string> = new Set(['packs', 'session packs'])

/** The packs, each with its count before and its mass or state behind; undefined where the command lists none. `keptPack` stands where none is named. */
export function listed(
  values: readonly Candidate[],
  { options }: CommandWords,
  keptPack: string | undefined,
): Listed | undefined {
  const list = options.find(({ kind }) => listKinds.has(kind))
  if (!list || options.some(({ kind }) => kind === 'pack')) return undefined
  const used = new Set<Candidate>()
  const entries: string[] = []
  let count = 1
  for (const value of values) {
    const { kind, pack } = value
    if (kind === 'count') {
      count = Number(value.text)
      used.add(value)
    } else if (kind === 'pack' && pack?.capacity_Ah !== undefined) {
      const times = pack.count ?? count
      entries.push(`${times > 1 ? `${times}x ` : ''}${wholePack(pack).text ?? ''}`)
      count = 1
      used.add(value)
    } else if (entries.length > 0 && (kind === 'mass' ? list.kind === 'packs' : false)) {
      entries[entries.length - 1] += ` ${value.text}`
      used.add(value)
    } else if (entries.length > 0 && kind === 'state' && list.kind === 'session packs') {
      entries[entries.length - 1] += ` at ${value.text}`
      used.add(value)
    }
  }
  // "Six of them": the pack of the question before.
  if (entries.length === 0 && keptPack !== undefined) entries.push(`${count > 1 ? `${count}x ` : ''}${keptPack}`)
  return entries.length === 0 ? undefined : { option: list.name, text: entries.join('; '), used }
}
