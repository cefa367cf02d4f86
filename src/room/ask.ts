// Questions from the command line: one from its words, or with --lines one a line from standard input.

import '../program/footing.ts'

const { askOnce } = await import('./ask-once.ts')
const { askLines } = await import('./ask-lines.ts')

/** Only leading ones are ours: whatever else starts with a dash belongs to the question. */
const flags = ['--json', '--full', '--lines', '--as-member']
const words = process.argv.slice(2)
const first = words.findIndex(word => !flags.includes(word))
const given = new Set(first < 0 ? words : words.slice(0, first))
const question = first < 0 ? '' : words.slice(first).join(' ')
const asked = { json: given.has('--json'), full: given.has('--full'), moderates: !given.has('--as-member') }
process.exitCode = given.has('--lines') ? await askLines(asked) : await askOnce(question, asked)
