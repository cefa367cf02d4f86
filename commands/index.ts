// Every command, in the order in which help lists them.

import type { Command } from '../src/assistant/command.ts'
import { helpOn } from './help.ts'

const answering: readonly Command[] = []

export const commands: readonly Command[] = [...answering, helpOn(answering)]
