// One question from the command line: exit 0 answered, 2 a problem with the question, 1 a fault of ours.

import { enableCompileCache } from 'node:module'

enableCompileCache()
const { askOnce } = await import('./ask-once.ts')
const words = process.argv.slice(2)
const json = words[0] === '--json'
// Only a leading --json is ours: whatever else starts with a dash belongs to the question.
process.exitCode = await askOnce((json ? words.slice(1) : words).join(' '), json)
