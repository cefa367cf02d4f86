// Values to offer while someone types: whole examples first, and packs put together from their parts.

import { chemistryNames } from '../parts/chemistry.ts'

/** No surface shows more. */
export const mostCompletions = 25
const capacities_mAh = [300, 450, 550, 650, 720, 850, 1000, 1300, 1500, 2200, 2600, 3000, 4000, 5000]
const listed = (texts: string): readonly string[] => texts.split(', ')
const usualPacks = listed(
  '1S 550 LiHV, 2S 450 LiPo, 3S 720 LiHV, 4S 1500 LiPo, 6S 1300 LiPo, 2S 2600 Li-ion, 3S 1100 LiFe',
)
const levels = 'full, storage, 80%, 50%, 20%, 3.85V per cell, 3.7V per cell, 3.5V per cell, 4.1V per cell'
const supplies = 'PD 20W, PD 30W, PD 45W, PD 65W, PD 100W, PD 140W, USB 5V 2A, 12V 5A, 12V 10A, 20V 5A'
const batteries = 'power bank 37Wh PD 20W, power bank 74Wh PD 45W, 3S 5000 Li-ion, 4S 5000 Li-ion, 6S 5000 LiPo'

const examples: Readonly<Record<string, readonly string[]>> = {
  charger: listed('0.3/0.8/1.5/3A, 0.3/0.8/1.5/3A 60W 1-5S 10-26V, 0.1-10A by 0.1, 0.1-10A by 0.1 200W 6S 10-30V'),
  source: listed(`${supplies}, car 10A engine off, car 10A engine running, ${batteries}`),
  from: listed(`empty, ${levels}`),
  to: listed(levels),
  current: listed('0.5A, 1A, 1.5A, 2A, 3A, 4A, 5A, 10A, 1C, 2C'),
}

/**
 * At most 25 values of a kind that begin as `prefix` does, whatever the case; none for a kind that has no
 * examples. Each can be read by the kind's reader.
 */
export function completions(kind: string, prefix: string): readonly string[] {
  const typed = prefix.trimStart().replace(/ +/g, ' ')
  const candidates = kind === 'pack' ? [...usualPacks, ...packsLike(typed)] : (examples[kind] ?? [])
  const lower = typed.toLowerCase()
  const fitting = candidates.filter(value => value.toLowerCase().startsWith(lower))
  return [...new Set(fitting)].slice(0, mostCompletions)
}

/** Every usual capacity and chemistry behind the cells typed so far; a capacity typed in full is kept. */
function packsLike(typed: string): readonly string[] {
  const [, cells, given] = /^(\d{1,2}S(?:\d?P)?)(?: (\d+(?:[.,]\d+)?(?:m?Ah)?) )?/i.exec(typed) ?? []
  if (cells === undefined) return []
  const series = cells.toUpperCase()
  const sizes = given === undefined ? capacities_mAh : [given]
  return sizes.flatMap(size => chemistryNames.map(chemistry => `${series} ${size} ${chemistry}`))
}
