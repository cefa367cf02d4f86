// Whom to call at this club and from where, and where it hands in batteries.

import type { Locale } from '../../ground/locale.ts'
import { present } from '../../ground/present.ts'
import { joined, type Text } from '../../ground/text.ts'
import type { HouseRules } from '../../memory/memory.ts'

export function callWords({ emergencyNumber, fieldAddress }: HouseRules, { say, own }: Locale): Text | undefined {
  const said = present([
    emergencyNumber === undefined ? undefined : say`Call ${own(emergencyNumber)}.`,
    fieldAddress === undefined ? undefined : say`Our field: ${own(fieldAddress)}.`,
  ])
  return said.length > 0 ? joined(said) : undefined
}

export function handInWords({ collectionPoint, quietHours }: HouseRules, { say, own }: Locale): Text | undefined {
  if (collectionPoint === undefined) return undefined
  const where = say`This club hands batteries in here: ${own(collectionPoint)}.`
  return quietHours === undefined ? where : joined([where, say`Not in the quiet hours, ${own(quietHours)}.`])
}
