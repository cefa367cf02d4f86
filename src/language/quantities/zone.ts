// Time zones as people call them: "Europe/Vienna", "vienna", "UTC+2". Intl knows which there are.

import { plainText, problemAt, unquoted } from '../../ground/plain-text.ts'
import { aZone, noZone } from './quantity.words.ts'

/** By their names, as they are offered. */
export const zones: readonly string[] = Intl.supportedValuesOf('timeZone')

const cities: ReadonlyMap<string, string> = new Map(
  zones.filter(zone => zone.includes('/')).map(zone => [cityOf(zone).toLowerCase(), zone]),
)

/** "New York" of "America/New_York". */
export function cityOf(zone: string): string {
  return zone.slice(zone.lastIndexOf('/') + 1).replaceAll('_', ' ')
}

/** The name by which Intl takes it. Throws a Problem for what it does not know. */
export function readZone(text: string): string {
  const plain = unquoted(plainText(text))
  const zone = offsetOf(plain) ?? knownOf(plain.replaceAll(' ', '_')) ?? cities.get(plain.toLowerCase())
  if (zone !== undefined) return zone
  throw problemAt(plain, noZone, { expected: aZone, example: 'Europe/Vienna' })
}

const offset = /^(?:utc|gmt)? ?([+-])(\d{1,2})(?::?([0-5]\d))?$/i
/** No land is further from UTC. */
const furthest_h = 14

/** "+02:00" of "UTC+2". */
function offsetOf(plain: string): string | undefined {
  const [, sign, hours = '', minutes = '00'] = offset.exec(plain.replace('−', '-')) ?? []
  return sign && Number(hours) <= furthest_h ? `${sign}${hours.padStart(2, '0')}:${minutes}` : undefined
}

function knownOf(name: string): string | undefined {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }).resolvedOptions().timeZone
  } catch (error) {
    if (error instanceof RangeError) return undefined
    throw error
  }
}
