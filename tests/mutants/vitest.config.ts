// The tests of one area, in a copy of the project where one place at a time is changed.

import { mergeConfig } from 'vitest/config'
import base from '../../vitest.config.ts'
import { areas } from './areas.ts'

// It runs them in threads, which take no such arguments.
const { include: _, maxWorkers: __, execArgv: ___, ...test } = base.test ?? {}

export default mergeConfig({ test }, { test: { include: areas[process.env.MUTANTS_OF ?? '']?.tests } })
