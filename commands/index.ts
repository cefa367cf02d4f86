// Every command, in the order in which help lists them.

import type { Command } from '../src/assistant/command.ts'
import { current } from './current.ts'
import { exportMe } from './export-me.ts'
import { forgetMe } from './forget-me.ts'
import { helpOn } from './help.ts'
import { houseSet } from './house-set.ts'
import { houseShow } from './house-show.ts'
import { kitList } from './kit-list.ts'
import { kitRemove } from './kit-remove.ts'
import { kitRename } from './kit-rename.ts'
import { kitSave } from './kit-save.ts'
import { source } from './source.ts'
import { time } from './time.ts'

const answering: readonly Command[] = [
  current,
  time,
  source,
  kitSave,
  kitList,
  kitRename,
  kitRemove,
  houseShow,
  houseSet,
  exportMe,
  forgetMe,
]

export const commands: readonly Command[] = [...answering, helpOn(answering)]
