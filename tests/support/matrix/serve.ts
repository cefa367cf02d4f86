// The assistant on Matrix alone, as a process of its own: configured by its environment, ended by SIGTERM.

import { join } from 'node:path'
import { commands } from '../../../commands/index.ts'
import { createAssistant } from '../../../src/assistant/assistant.ts'
import { drawPng } from '../../../src/charts/draw.ts'
import { readConfig } from '../../../src/config.ts'
import { createLog, describeError } from '../../../src/log.ts'
import { matrixSettings } from '../../../src/matrix/settings.ts'
import { createMatrixSurface } from '../../../src/matrix/surface.ts'
import { openMemory } from '../../../src/memory/open.ts'

const config = readConfig()
const settings = matrixSettings(config)
if (!settings) throw new Error('MATRIX_HOMESERVER is not set')
const log = createLog(config.CHARGEHAND_LOG_LEVEL)
const memory = await openMemory({ dataFolder: config.CHARGEHAND_DATA })
const assistant = createAssistant({
  commands,
  memory,
  clock: () => new Date(),
  onFault: (fault, reference) => log.error({ reference, fault: describeError(fault) }, 'a question failed'),
})
const surface = createMatrixSurface(
  {
    settings,
    folder: join(config.CHARGEHAND_DATA, 'matrix'),
    assistant,
    answered: memory.answered,
    draw: drawPng,
    log,
  },
  error => {
    log.fatal({ error: describeError(error) }, 'message keys could not be written')
    process.exit(1)
  },
)
process.on('SIGTERM', async () => {
  await surface.stop()
  await memory.close()
  process.stdout.write('stopped\n')
  // The SDK leaves timers of its requests behind, up to two minutes long.
  process.exit()
})
await surface.start()
process.stdout.write('ready\n')
