// What was said before by an asker in a place, and what the last reply offered: picked by its number or by its label.

import type { Frames, Offer } from '../../language/frames/frame.ts'
import type { Conversation } from '../asking/around.ts'
import type { Reply } from '../reply.ts'

const barely = (typed: string): string => typed.replace(/^[\s#(]+|[\s).!?:]+$/g, '').toLowerCase()

/** The question that a number picks of the choices that were shown, or its label of what else was; else what was typed. */
export const picked = (typed: string, offered: readonly Offer[]): string =>
  offered.find(({ as }) => as === barely(typed))?.question ?? typed

/** "Next: The C-rate" is picked by "next". */
export function offersOf({ command, followUps, problem }: Reply, { frame }: Conversation['talk']): readonly Offer[] {
  // What a greeting offers is an example: "how long" behind it is of the pack that was spoken of.
  if (command === 'hello' && frame) return []
  return followUps.flatMap(({ label, question }, at) => {
    const name = label.replace(/:.*$/, '')
    return (problem ? [String(at + 1), name] : [name]).map(one => ({ as: barely(one), question }))
  })
}

/** As it stands now, and how it goes on. */
export const talkIn = (frames: Frames, asker: string, place: string, now_ms: number): Conversation => ({
  talk: frames.get(asker, place, now_ms),
  keep: frame => frames.set(asker, place, { frame, about: undefined }, now_ms),
  keepAbout: about => frames.set(asker, place, { about }, now_ms),
  keepTold: told => frames.set(asker, place, { told }, now_ms),
})
