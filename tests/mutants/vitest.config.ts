// The tests of one area, in a copy of the project where one place at a time is changed.

import { mergeConfig } from 'vitest/config'
import base from '../../vitest.config.ts'
import { areas } from './areas.ts'

const { include: _, maxWorkers: __, ...test } = base.test ?? {}

export default mergeConfig({ test }, { test: { include: areas[process.env.MUTANTS_OF ?? '']?.tests } })
