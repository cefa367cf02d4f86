// Prose stands in *.words.ts and in the handbook, so that another language is other words and nothing else.

import { globSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parseAst } from 'vitest/node'
import { commands } from '../../commands/index.ts'

interface Node {
  readonly type: string
  readonly [key: string]: unknown
}

interface Found {
  readonly text: string
  /** What it stands in, nearest first. */
  readonly within: readonly Node[]
}

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value

/** Three words in a row: less is a name, a key or notation. */
const prose = /(?:\p{L}[\p{L}'’]+[,;:.]? ){2}\p{L}[\p{L}'’]+/u

function textOf(node: Node): string | undefined {
  if (node.type === 'Literal' && typeof node.value === 'string') return node.value
  return node.type === 'TemplateElement' ? (node.value as { cooked: string }).cooked : undefined
}

/** Every text of a source, with what it stands in. */
function textsIn(source: string): readonly Found[] {
  const found: Found[] = []
  const look = (value: unknown, within: readonly Node[]): void => {
    if (Array.isArray(value)) for (const item of value) look(item, within)
    if (!isNode(value)) return
    const text = textOf(value)
    if (text !== undefined) found.push({ text, within })
    for (const [key, inner] of Object.entries(value)) if (key !== 'type') look(inner, [value, ...within])
  }
  look(parseAst(source, { lang: 'ts' }), [])
  return found
}

const nameIn = (node: unknown): string => {
  if (!isNode(node)) return ''
  return String(node.name ?? node.value ?? nameIn(node.property))
}
const ofType = ({ within }: Found, type: string): readonly Node[] => within.filter(node => node.type === type)
const inProperty = (found: Found, ...names: readonly string[]): boolean =>
  ofType(found, 'Property').some(({ key }) => names.includes(nameIn(key)))
const inCall = (found: Found, ...names: readonly string[]): boolean =>
  ofType(found, 'CallExpression').some(({ callee }) => names.includes(nameIn(callee)))
const inNew = (found: Found, name: RegExp): boolean =>
  ofType(found, 'NewExpression').some(({ callee }) => name.test(nameIn(callee)))

/** The text of a `say` itself, not of a value in it. */
const isSaid = ({ within: [, tagged] }: Found): boolean =>
  tagged?.type === 'TaggedTemplateExpression' && nameIn(tagged.tag) === 'say'

const sql = /^\s*(?:select|insert|update|delete|create|pragma|order by)\b/i
const listeners =
  /^src\/language\/(?:candidates|conversation|frames|corpus|dangers|model|parts|quantities\/(?:measures|numerals)\.ts$|reading|sentence|tongues)(?:\/|$)/
const commandNames = commands.map(({ name }) => name)
const details = new Set(commands.flatMap(({ takes }) => Object.keys(takes)))

/** Texts that nobody reads in a reply. */
const allowed: readonly (readonly [string, (found: Found, path: string) => boolean])[] = [
  ['an error for programmers or for whoever runs it', found => inNew(found, /Error$/)],
  [
    'what whoever runs it can do',
    found => ofType(found, 'VariableDeclarator').some(({ id }) => nameIn(id) === 'mending'),
  ],
  ['a line of the log', found => inCall(found, 'fatal', 'error', 'warn', 'info', 'debug', 'log', 'onFault')],
  ['what the settings lack, said at the start', (_, path) => path === 'src/program/config.ts'],
  ['what a measure counts', (found, path) => path === 'src/http/metrics.ts' && inProperty(found, 'help')],
  [
    'what a client of ours is told by HTTP',
    (found, path) => /^src\/(?:discord\/endpoint|http\/\w+)\.ts$/.test(path) && inProperty(found, 'body'),
  ],
  [
    'a citation of a source',
    found => inProperty(found, 'source', 'from') || inCall(found, 'practice', 'published', 'computed', 'remembered'),
  ],
  ['the core, which cites and has no way to say anything', (_, path) => path.startsWith('src/charging/')],
  ['a word of notation', ({ text }) => text === 'needs balance lead'],
  ['the sentence in which a single word is heard', ({ text }) => text === 'my pack is '],
  ['notation', ({ text }) => commandNames.some(name => /^[\s"]*(.*)$/s.exec(text)?.[1]?.startsWith(`${name} `))],
  ['names of details', ({ text }) => text.split(', ').every(name => details.has(name))],
  ['a question about a pack, as it would be typed', ({ text }) => /\b\dS \d{3,4} Li/.test(text)],
  ['a standard by its number', ({ text }) => /\bIEC \d/.test(text)],
  ['an example of notation', found => inProperty(found, 'example', 'examples')],
  ['the demo club, its name and its questions', (_, path) => path === 'src/room/demo-club.ts'],
  ['SQL, and columns of tables', ({ text }, path) => sql.test(text) || path === 'src/memory/opening/migrations.ts'],
  ['a key that a type lists', ({ text }) => keys.has(text)],
  [
    'words that are listened for',
    (found, path) =>
      path === 'src/assistant/kit/question-words.ts' ||
      path === 'src/language/quantities/dimensions.ts' ||
      found.text.startsWith('no one two three ') ||
      (listeners.test(path) && !inProperty(found, 'what', 'expected') && !inNew(found, /^Problem$/)),
  ],
]

const texts = globSync(['src/**/*.ts', 'commands/**/*.ts']).map(
  path => [path, textsIn(readFileSync(path, 'utf8'))] as const,
)
const keys = new Set(
  texts.flatMap(([, found]) => found.filter(one => one.within[0]?.type === 'TSLiteralType').map(({ text }) => text)),
)

describe('prose', () => {
  it('is found where it stands', () => {
    const found = textsIn('const a = { what: `Set #{b} and stay with it`, key: "go on" }'.replace('#', '$'))
    expect(found.filter(({ text }) => prose.test(text)).map(({ text }) => text)).toEqual([' and stay with it'])
    expect(texts.length).toBeGreaterThan(300)
  })

  it('stands in words files and in the handbook only', () => {
    const offences = texts
      .filter(([path]) => !path.endsWith('.words.ts') && !path.startsWith('src/handbook/'))
      .flatMap(([path, found]) =>
        found
          .filter(({ text }) => prose.test(text))
          .filter(one => !allowed.some(([, is]) => is(one, path)))
          .map(({ text }) => `${path}: ${text}`),
      )
    expect(offences).toEqual([])
  })

  it('is said by a locale, also where it may stand', () => {
    const offences = texts
      .filter(([path]) => path.endsWith('.words.ts'))
      .flatMap(([path, found]) =>
        found
          .filter(one => prose.test(one.text) && !isSaid(one) && !inProperty(one, 'asks', 'tells', 'plainWords'))
          .filter(one => !allowed.some(([, is]) => is(one, path)))
          .map(({ text }) => `${path}: ${text}`),
      )
    expect(offences).toEqual([])
  })
})
