// Whom to call at this club and from where, and where it hands in batteries.

import type { Locale } from '../../ground/locale.ts'
import { joined, type Text } from '../../ground/text.ts'
import type { HouseRules } from '../../memory/memory.ts'

export function callWords({ emergencyNumber, fieldAddress }: HouseRules, { say, own }: Locale): Text | undefined {
  return saidOf([
    emergencyNumber === undefined ? undefined : say`Call ${own(emergencyNumber)}.`,
    fieldAddress === undefined ? undefined : say`Our field: ${own(fieldAddress)}.`,
  ])
}

const saidOf = (texts: readonly (Text | undefined)[]): Text | undefined =>
  texts.some(text => text) ? joined(texts) : undefined

export function handInWords({ collectionPoint, quietHours }: HouseRules, { say, own }: Locale): Text | undefined {
  return saidOf([
    collectionPoint === undefined ? undefined : say`This club hands batteries in here: ${own(collectionPoint)}.`,
    quietHours === undefined ? undefined : say`Nobody takes one in during the quiet hours, ${own(quietHours)}.`,
  ])
}
