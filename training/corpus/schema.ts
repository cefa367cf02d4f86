// How the messages of the corpus are marked. For the trainer and the tests: nothing reads this at run time.

import { z } from 'zod'
import { type Danger, dangers } from '../../src/charging/situation/dangers.ts'
import { intents } from '../../src/language/corpus/intents.ts'

/** An intent as the files write it, with dashes for the spaces of a command's name. */
const intent = z
  .string()
  .transform(written => written.replace('-', ' '))
  .pipe(z.enum(intents))

export const valueKinds = [
  'pack',
  'chemistry',
  'cells',
  'capacity',
  'charger',
  'source',
  'state',
  'target',
  'current',
  'rate',
  'voltage',
  'power',
  'energy',
  'duration',
  'clock',
  'temperature',
  'resistance',
  'length',
  'gauge',
  'mass',
  'count',
  'cellvolts',
  'connector',
  'name',
  'title',
  'text',
] as const

const marks = {
  text: z.string().min(1),
  intent,
  /** A second intent that fits too. */
  also: intent.optional(),
  /** What a handbook entry or first aid would have to speak of. */
  about: z.string().optional(),
  /** The earlier message of the same person that this one follows. */
  after: z.string().optional(),
  values: z.array(z.strictObject({ kind: z.enum(valueKinds), text: z.string().min(1) })),
  dangers: z.array(z.enum(Object.keys(dangers) as [Danger, ...Danger[]])),
}

/** Part A: what one person asks. Part B: pairs of a danger in an ordinary question and its harmless twin. */
export const markedMessage = z.discriminatedUnion('part', [
  z.strictObject({ part: z.literal('A'), ...marks }),
  z.strictObject({ part: z.literal('B'), pair: z.int().min(1), ...marks }),
])

export type MarkedMessage = z.infer<typeof markedMessage>

/** Further messages, of people who write what the others seldom do: only what they want is marked. */
export const furtherMessage = z.strictObject({
  part: z.literal('C'),
  person: z.int().min(1),
  text: z.string().min(1),
  intent,
})

export type FurtherMessage = z.infer<typeof furtherMessage>
