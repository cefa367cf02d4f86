// A limit for the drop in a lead: volts, or a share of the voltage that is fed in.

import { plainText } from '../../ground/plain-text.ts'
import { readPercent, readVoltage, writePercent, writeVoltage } from '../quantities/quantities.ts'
import { dropInVolts, shareOfVolts } from './kinds.words.ts'
import { startingWith, type ValueKind } from './value-kind.ts'

export type DropLimit =
  | { readonly kind: 'volts'; readonly drop_V: number }
  | { readonly kind: 'share'; readonly share: number }

const suggestions = ['3%', '0.3V', '5%', '0.5V'] as const
const shareRange = { phrase: shareOfVolts, min: 0.001, max: 0.5, example: '3%' }
const voltsRange = { phrase: dropInVolts, min: 0.01, max: 20, example: '0.3V' }

export const dropKind: ValueKind<DropLimit> = {
  name: 'drop',
  example: suggestions[0],
  read: text => ({
    value: /%|percent|pct/i.test(plainText(text))
      ? { kind: 'share', share: readPercent(text, shareRange) }
      : { kind: 'volts', drop_V: readVoltage(text, voltsRange) },
    assumed: [],
  }),
  write: limit => (limit.kind === 'share' ? writePercent(limit.share) : writeVoltage(limit.drop_V)),
  complete: startingWith(suggestions),
}
