// The demo club that the room opens with: an invented club, its kit, and three questions it asks all the time.

import type { KitEntry, KitMemory } from '../memory/kit.ts'

export const demoClub = {
  id: 'room:heron-meadow',
  name: 'Heron Meadow Electric Flyers',
  questions: [
    'what current for a 3S 720 LiHV on a 0.3/0.8/1.5/3A 60W 1-5S 10-26V charger from a PD 65W',
    'how long for a 2S 450 LiPo at 0.5A from 3.7V',
    'can my 4S 5000 Li-ion charge 6 of my 3S 720 LiHV',
  ],
} as const

const owner = { scope: 'community', id: demoClub.id } as const

const kit: readonly KitEntry[] = [
  { owner, kind: 'pack', name: 'wren', notation: '3S 720mAh LiHV' },
  { owner, kind: 'pack', name: 'stint', notation: '1S 550mAh LiHV' },
  { owner, kind: 'pack', name: 'plover', notation: '2S 450mAh LiPo' },
  { owner, kind: 'pack', name: 'heron', notation: '4S 5000mAh Li-ion' },
  { owner, kind: 'charger', name: 'flightbox', notation: '0.3/0.8/1.5/3A 60W 1-5S 10-26V' },
  { owner, kind: 'charger', name: 'clubhouse', notation: '0.1-10A by 0.1 200W 1-6S 10-30V' },
  { owner, kind: 'source', name: 'brick', notation: 'PD 65W' },
]

/** Stocks the demo club's kit, once: what has been changed or removed since stays so. */
export async function stockDemoKit(memory: KitMemory): Promise<void> {
  if ((await memory.count(owner)) > 0) return
  for (const entry of kit) await memory.save(entry, kit.length)
}
