// The pictures in the README: those that real replies to these questions carry.

import { drawPng } from '../../src/charts/drawing/draw.ts'
import { roomOccasion } from '../../src/room/occasion.ts'
import { withDemoAssistant } from '../../tests/support/demo-assistant.ts'

export const picturesFolder = 'docs/pictures'

/** By file name; the README says the question under each. */
export const pictured: Readonly<Record<string, string>> = {
  'charge.png': 'how long for wren on the flightbox at 0.8A from 3.7V',
  'drain.png': 'can my 4S 5000 Li-ion charge 6 of my 3S 720 LiHV',
  'plan.png':
    'plan packs: 4x wren at 3.7V; 2x plover at 20% chargers: flightbox; clubhouse sources: brick; heron by: 2h',
}

export function pictures(): Promise<ReadonlyMap<string, Buffer>> {
  return withDemoAssistant(async assistant => {
    const drawn = new Map<string, Buffer>()
    for (const [file, question] of Object.entries(pictured)) {
      const { charts } = await assistant.answer(question, roomOccasion())
      if (!charts[0]) throw new Error(`no picture comes with "${question}"`)
      drawn.set(file, await drawPng(charts[0]))
    }
    return drawn
  })
}
